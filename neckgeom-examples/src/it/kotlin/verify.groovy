// It failed for the null, and for nothing else.
String[] errors = new File(basedir, 'build.log').readLines().findAll { it.contains('Null.kt:') && it.contains('ERROR') }
assert errors.length > 0 : 'Null.kt must not compile'
assert errors.every { it.contains('Null') && it.contains('non-null') } : errors
