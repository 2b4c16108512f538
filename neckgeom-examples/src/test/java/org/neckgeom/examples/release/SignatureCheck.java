package org.neckgeom.examples.release;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import org.bouncycastle.openpgp.PGPException;
import org.bouncycastle.openpgp.PGPPublicKey;
import org.bouncycastle.openpgp.PGPPublicKeyRing;
import org.bouncycastle.openpgp.PGPSecretKeyRing;
import org.bouncycastle.openpgp.PGPSignature;
import org.bouncycastle.openpgp.PGPSignatureList;
import org.bouncycastle.openpgp.PGPUtil;
import org.bouncycastle.openpgp.bc.BcPGPObjectFactory;
import org.bouncycastle.openpgp.operator.bc.BcPGPContentVerifierBuilderProvider;

/** Verifies detached OpenPGP signatures with the key of the one who releases. */
final class SignatureCheck {

    private final Map<Long, PGPPublicKey> keys;

    private SignatureCheck(Map<Long, PGPPublicKey> keys) {
        this.keys = Map.copyOf(keys);
    }

    /** A check against the keys in this text, public or secret, in armour. */
    static SignatureCheck of(String armoured) throws IOException {
        Map<Long, PGPPublicKey> keys = new HashMap<>();
        for (Object ring : objects(armoured.getBytes(StandardCharsets.US_ASCII))) {
            Iterator<PGPPublicKey> each;
            if (ring instanceof PGPSecretKeyRing secret) {
                each = secret.getPublicKeys();
            } else if (ring instanceof PGPPublicKeyRing open) {
                each = open.getPublicKeys();
            } else {
                throw new IllegalArgumentException("key must be an OpenPGP key in armour, but was something else");
            }
            each.forEachRemaining(key -> keys.put(key.getKeyID(), key));
        }
        return new SignatureCheck(keys);
    }

    /** The key in the file {@code -Dneckgeom.key} or, without it, the one that signs: {@code MAVEN_GPG_KEY}. */
    static SignatureCheck ofThisRelease() throws IOException {
        String file = System.getProperty("neckgeom.key");
        String signing = System.getenv("MAVEN_GPG_KEY");
        if (file == null && signing == null) {
            throw new IllegalArgumentException("say -Dneckgeom.key=FILE, the public key that signed, in armour");
        }
        return of(file == null ? signing : Files.readString(Path.of(file)));
    }

    /** Why a signature does not hold for these bytes, if it does not. */
    Optional<String> problem(byte[] bytes, byte[] armoured) throws IOException {
        for (Object object : objects(armoured)) {
            if (object instanceof PGPSignatureList signatures && !signatures.isEmpty()) {
                return problem(bytes, signatures.get(0));
            }
        }
        return Optional.of("is no signature");
    }

    private Optional<String> problem(byte[] bytes, PGPSignature signature) {
        PGPPublicKey key = keys.get(signature.getKeyID());
        if (key == null) {
            return Optional.of("was made by key %016X, which is not the releasing one".formatted(signature.getKeyID()));
        }
        try {
            signature.init(new BcPGPContentVerifierBuilderProvider(), key);
            signature.update(bytes);
            return signature.verify() ? Optional.empty() : Optional.of("does not fit the file");
        } catch (PGPException unreadable) {
            return Optional.of("cannot be verified: " + unreadable.getMessage());
        }
    }

    private static Iterable<Object> objects(byte[] armoured) throws IOException {
        return new BcPGPObjectFactory(PGPUtil.getDecoderStream(new ByteArrayInputStream(armoured)));
    }
}
