/**
 * One X.509 certificate, put together and signed (RFC 5280, P-256 with SHA-256). Its parts are
 * written by a package; the signature is made by Node. Whoever reads it is another program.
 */
import { createHash, createPrivateKey, createPublicKey, sign, X509Certificate } from 'node:crypto';
import { AsnConvert, OctetString } from '@peculiar/asn1-schema';
import {
  AlgorithmIdentifier,
  AttributeTypeAndValue,
  AttributeValue,
  AuthorityKeyIdentifier,
  BasicConstraints,
  Certificate,
  ExtendedKeyUsage,
  Extension,
  Extensions,
  GeneralName,
  GeneralSubtree,
  GeneralSubtrees,
  id_ce_authorityKeyIdentifier,
  id_ce_basicConstraints,
  id_ce_extKeyUsage,
  id_ce_keyUsage,
  id_ce_nameConstraints,
  id_ce_subjectAltName,
  id_ce_subjectKeyIdentifier,
  id_kp_serverAuth,
  KeyIdentifier,
  KeyUsage,
  KeyUsageFlags,
  Name,
  NameConstraints,
  RelativeDistinguishedName,
  SubjectAlternativeName,
  SubjectKeyIdentifier,
  SubjectPublicKeyInfo,
  TBSCertificate,
  Validity,
} from '@peculiar/asn1-x509';

/** Names and addresses; of an authority they are subtrees, and an address is `10.0.0.0/8`. */
export type Named = { readonly names: readonly string[]; readonly addresses: readonly string[] };

type Wanted = {
  readonly commonName: string;
  /** The key that the certificate is about, as PEM; of its public half only. */
  readonly keyPem: string;
  /** Who signs: absent where the certificate signs itself. */
  readonly issuer?: { readonly certificatePem: string; readonly keyPem: string };
  readonly is: 'authority' | 'server';
  readonly named: Named;
  readonly from: Date;
  readonly until: Date;
  /** 16 bytes of chance, so that no two certificates of an authority have one number. */
  readonly serial: Uint8Array;
};

const COMMON_NAME = '2.5.4.3';
const ECDSA_WITH_SHA256 = '1.2.840.10045.4.3.2';

export const writeCertificate = (wanted: Wanted): string => {
  const { issuer, keyPem, commonName, from, until } = wanted;
  const spki = createPublicKey(keyPem).export({ type: 'spki', format: 'der' });
  const subject = nameOf(commonName);
  const signature = new AlgorithmIdentifier({ algorithm: ECDSA_WITH_SHA256 });
  const content = new TBSCertificate({
    version: 2,
    serialNumber: buffer(positive(wanted.serial)),
    signature,
    issuer: issuer === undefined ? subject : subjectOf(issuer.certificatePem),
    validity: new Validity({ notBefore: from, notAfter: until }),
    subject,
    subjectPublicKeyInfo: AsnConvert.parse(buffer(spki), SubjectPublicKeyInfo),
    extensions: new Extensions(extensionsOf(wanted, keyIdOf(keyPem))),
  });
  const signer = createPrivateKey(issuer?.keyPem ?? keyPem);
  const signed = sign('sha256', Buffer.from(AsnConvert.serialize(content)), signer);
  const whole = new Certificate({
    tbsCertificate: content,
    signatureAlgorithm: signature,
    signatureValue: buffer(signed),
  });
  return new X509Certificate(Buffer.from(AsnConvert.serialize(whole))).toString();
};

/** An ArrayBuffer of its own: the package takes a part of a larger one for the whole. */
const buffer = (bytes: Uint8Array): ArrayBuffer => Uint8Array.from(bytes).buffer;

/** A serial number is positive and begins with no empty byte (RFC 5280, 4.1.2.2, from memory). */
const positive = (serial: Uint8Array): Uint8Array =>
  Uint8Array.from(serial, (byte, index) => (index === 0 ? (byte & 0x3f) | 0x40 : byte));

const nameOf = (commonName: string): Name =>
  new Name([
    new RelativeDistinguishedName([
      new AttributeTypeAndValue({
        type: COMMON_NAME,
        value: new AttributeValue({ utf8String: commonName }),
      }),
    ]),
  ]);

const subjectOf = (certificatePem: string): Name => {
  const { raw } = new X509Certificate(certificatePem);
  return AsnConvert.parse(buffer(raw), Certificate).tbsCertificate.subject;
};

const keyIdOf = (keyPem: string): ArrayBuffer => {
  const spki = createPublicKey(keyPem).export({ type: 'spki', format: 'der' });
  return buffer(createHash('sha256').update(spki).digest().subarray(0, 20));
};

const extensionsOf = (wanted: Wanted, keyId: ArrayBuffer): Extension[] => [
  ...(wanted.is === 'authority' ? authorityParts(wanted.named) : serverParts(wanted.named)),
  part(id_ce_subjectKeyIdentifier, false, new SubjectKeyIdentifier(keyId)),
  part(
    id_ce_authorityKeyIdentifier,
    false,
    new AuthorityKeyIdentifier({
      keyIdentifier: new KeyIdentifier(
        wanted.issuer === undefined ? keyId : keyIdOf(wanted.issuer.keyPem),
      ),
    }),
  ),
];

/** Signs certificates of servers and nothing below them, under these names and addresses only. */
const authorityParts = (named: Named): readonly Extension[] => [
  part(id_ce_basicConstraints, true, new BasicConstraints({ cA: true, pathLenConstraint: 0 })),
  part(id_ce_keyUsage, true, new KeyUsage(KeyUsageFlags.keyCertSign)),
  part(
    id_ce_nameConstraints,
    true,
    new NameConstraints({
      permittedSubtrees: new GeneralSubtrees(
        generalNames(named).map((base) => new GeneralSubtree({ base })),
      ),
    }),
  ),
];

const serverParts = (named: Named): readonly Extension[] => [
  part(id_ce_basicConstraints, true, new BasicConstraints({ cA: false })),
  part(id_ce_keyUsage, true, new KeyUsage(KeyUsageFlags.digitalSignature)),
  part(id_ce_extKeyUsage, false, new ExtendedKeyUsage([id_kp_serverAuth])),
  part(id_ce_subjectAltName, false, new SubjectAlternativeName(generalNames(named))),
];

const generalNames = ({ names, addresses }: Named): GeneralName[] => [
  ...names.map((dNSName) => new GeneralName({ dNSName })),
  ...addresses.map((iPAddress) => new GeneralName({ iPAddress })),
];

const part = (extnID: string, critical: boolean, value: unknown): Extension =>
  new Extension({
    extnID,
    critical,
    extnValue: new OctetString(AsnConvert.serialize(value)),
  });

/** The names that an authority may vouch for, as they stand in its certificate. */
export const permittedNames = (certificatePem: string): readonly string[] => {
  const { raw } = new X509Certificate(certificatePem);
  const { extensions = [] } = AsnConvert.parse(buffer(raw), Certificate).tbsCertificate;
  const found = extensions.find(({ extnID }) => extnID === id_ce_nameConstraints);
  if (found === undefined) return [];
  const { permittedSubtrees = [] } = AsnConvert.parse(found.extnValue.buffer, NameConstraints);
  return permittedSubtrees.flatMap(({ base }) => base.dNSName ?? []);
};
