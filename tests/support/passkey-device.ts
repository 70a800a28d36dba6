import { createHash, generateKeyPairSync, randomBytes, sign } from 'node:crypto';
import { isoCBOR } from '@simplewebauthn/server/helpers';

/** What a browser is asked to sign, as the application sends it. */
type Asked = {
	readonly id: string;
	readonly options: { readonly challenge: string; readonly rpId?: string; readonly rp?: { readonly id?: string } };
};

/** Who was present, as authenticators tell it in one byte (W3C Web Authentication, section 6.1). */
const FLAGS = { present: 0x01, verified: 0x04, withKey: 0x40 } as const;

const sha256 = (bytes: Uint8Array | string): Buffer => createHash('sha256').update(bytes).digest();

/**
 * A device that makes one passkey and shows it: what a browser and its authenticator answer together (W3C Web Authentication, level 2: client data
 * 5.8.1, authenticator data 6.1, attestation "none" 8.7, keys as in RFC 9053, section 7.1.1). `origin` is the page that the browser is at, `uses`
 * how often the device was used before.
 */
export function passkeyDevice(
	origin: URL,
	{ credentialId = randomBytes(16), uses = 0 }: { readonly credentialId?: Buffer; readonly uses?: number } = {},
) {
	const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
	const { x, y } = publicKey.export({ format: 'jwk' });
	const id = credentialId.toString('base64url');
	let count = uses;

	const clientData = (type: string, { options }: Asked, at: URL): Buffer =>
		Buffer.from(JSON.stringify({ type, challenge: options.challenge, origin: at.origin, crossOrigin: false }));
	function authenticatorData(place: string, flags: number, key: Uint8Array = new Uint8Array()): Buffer {
		const rest = Buffer.alloc(5);
		rest.writeUInt8(flags, 0);
		rest.writeUInt32BE(count++, 1);
		return Buffer.concat([sha256(place), rest, key]);
	}
	/** The public key, with its id and no word on who made the device. */
	function ownKey(): Buffer {
		const coordinate = (text: string | undefined) => new Uint8Array(Buffer.from(text!, 'base64url'));
		const cose = isoCBOR.encode(
			new Map<number, number | Uint8Array>([
				[1, 2],
				[3, -7],
				[-1, 1],
				[-2, coordinate(x)],
				[-3, coordinate(y)],
			]),
		);
		const length = Buffer.alloc(2);
		length.writeUInt16BE(credentialId.length);
		return Buffer.concat([Buffer.alloc(16), length, credentialId, cose]);
	}
	const answer = <Response>(asked: Asked, response: Response) => ({
		id: asked.id,
		response: { id, rawId: id, type: 'public-key' as const, clientExtensionResults: {}, response },
	});
	const text = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64url');

	return {
		/** The passkey's own id. */
		id,
		/** What the device answers where a passkey is to be made. */
		made(asked: Asked) {
			const flags = FLAGS.present | FLAGS.verified | FLAGS.withKey;
			const authData = authenticatorData(asked.options.rp?.id ?? origin.hostname, flags, ownKey());
			const attestation = isoCBOR.encode(
				new Map<string, string | Uint8Array | Map<string, never>>([
					['fmt', 'none'],
					['attStmt', new Map<string, never>()],
					['authData', new Uint8Array(authData)],
				]),
			);
			return answer(asked, {
				clientDataJSON: text(clientData('webauthn.create', asked, origin)),
				attestationObject: text(attestation),
				transports: ['internal'],
			});
		},
		/** What it answers where it is to be shown; `at` = the page that asks, `flags` = who was there. */
		shown(
			asked: Asked,
			{ at = origin, flags = FLAGS.present | FLAGS.verified }: { readonly at?: URL; readonly flags?: number } = {},
		) {
			const authData = authenticatorData(asked.options.rpId ?? at.hostname, flags);
			const signedData = clientData('webauthn.get', asked, at);
			return answer(asked, {
				clientDataJSON: text(signedData),
				authenticatorData: text(authData),
				signature: text(sign('sha256', Buffer.concat([authData, sha256(signedData)]), privateKey)),
			});
		},
	};
}

/** Somebody touched the device, and nobody's finger, face or PIN was looked at. */
export const PRESENT_ALONE = FLAGS.present;
