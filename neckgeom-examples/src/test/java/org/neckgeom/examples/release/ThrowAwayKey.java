package org.neckgeom.examples.release;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Date;
import org.bouncycastle.bcpg.ArmoredOutputStream;
import org.bouncycastle.bcpg.HashAlgorithmTags;
import org.bouncycastle.bcpg.PublicKeyAlgorithmTags;
import org.bouncycastle.bcpg.PublicKeyPacket;
import org.bouncycastle.crypto.generators.Ed25519KeyPairGenerator;
import org.bouncycastle.crypto.params.Ed25519KeyGenerationParameters;
import org.bouncycastle.openpgp.PGPException;
import org.bouncycastle.openpgp.PGPKeyPair;
import org.bouncycastle.openpgp.PGPSignature;
import org.bouncycastle.openpgp.PGPSignatureGenerator;
import org.bouncycastle.openpgp.operator.bc.BcPGPContentSignerBuilder;
import org.bouncycastle.openpgp.operator.bc.BcPGPKeyPair;

/** A key that lives as long as a test does. */
final class ThrowAwayKey {

    private final PGPKeyPair pair;

    private ThrowAwayKey(PGPKeyPair pair) {
        this.pair = pair;
    }

    static ThrowAwayKey make() {
        Ed25519KeyPairGenerator generator = new Ed25519KeyPairGenerator();
        generator.init(new Ed25519KeyGenerationParameters(new SecureRandom()));
        try {
            return new ThrowAwayKey(new BcPGPKeyPair(
                    PublicKeyPacket.VERSION_4,
                    PublicKeyAlgorithmTags.EDDSA_LEGACY,
                    generator.generateKeyPair(),
                    new Date()));
        } catch (PGPException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** The public half, in armour. */
    String armoured() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ArmoredOutputStream armour = ArmoredOutputStream.builder().build(bytes)) {
            pair.getPublicKey().encode(armour);
        }
        return bytes.toString(StandardCharsets.US_ASCII);
    }

    /** A detached signature of these bytes, in armour. */
    byte[] sign(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ArmoredOutputStream armour = ArmoredOutputStream.builder().build(out)) {
            PGPSignatureGenerator generator = new PGPSignatureGenerator(
                    new BcPGPContentSignerBuilder(pair.getPublicKey().getAlgorithm(), HashAlgorithmTags.SHA512),
                    pair.getPublicKey());
            generator.init(PGPSignature.BINARY_DOCUMENT, pair.getPrivateKey());
            generator.update(bytes);
            generator.generate().encode(armour);
        } catch (PGPException impossible) {
            throw new IllegalStateException(impossible);
        }
        return out.toByteArray();
    }
}
