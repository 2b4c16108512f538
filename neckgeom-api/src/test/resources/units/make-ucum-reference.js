// npm install @lhncbc/ucum-lhc@7.1.10; node make-ucum-reference.js
const {UcumLhcUtils}=require('@lhncbc/ucum-lhc');const u=UcumLhcUtils.getInstance();
const pairs=[["mm","m"],["cm","m"],["m","m"],["[in_i]","m"],["[mil_i]","m"],["[ft_i]","m"],["rad","rad"],["deg","rad"],["N","kg.m/s2"],["kgf","kg.m/s2"],["[lbf_av]","kg.m/s2"],["[oz_av].[g]","kg.m/s2"],["MPa","kg/m/s2"],["GPa","kg/m/s2"],["[psi]","kg/m/s2"],["%","1"],["1","1"],["Cel","K"],["[degF]","K"],["K","K"],["Hz","/s"],["/min","/s"],["mm/s","m/s"],["mm/min","m/s"],["[in_i]/min","m/s"],["m/s","m/s"],["W","kg.m2/s3"],["N.m","kg.m2/s2"],["N.mm","kg.m2/s2"],["kg/m3","kg/m3"],["g/m","kg/m"],["[lb_av]/[in_i]","kg/m"]];
for(const [a,b] of pairs){const r=u.convertUnitTo(a,1,b);console.log(a+","+b+","+r.toVal);}
