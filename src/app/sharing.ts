import { randomUUID } from 'node:crypto';
import { hostname, networkInterfaces } from 'node:os';
import type { Pairing, PairingRecords } from '../store/pairing-records.ts';
import { createPairingCode, type PairingCode } from './pairing-code.ts';
import { hashOfToken, newToken } from './token.ts';

/** A device that is not used for so long must give a code again. */
export const UNUSED_LIFETIME_S = 30 * 24 * 3600;
/** When a device was last seen is written down this often: exact enough for a person, and no write a request. */
const NOTE_EVERY_MS = 3600 * 1000;

/** A paired device as the owner sees it. */
export type PairedDevice = Omit<Pairing, 'tokenHash'>;

/** Who on the local network may come in: devices that once gave the code shown on this computer. */
export type Sharing = {
	readonly code: PairingCode['show'];
	/** A token for the device, on disk (hashed) when it resolves; or throws `wrong-code` / `too-many-tries`. */
	readonly pair: (code: string, device: string) => Promise<string>;
	/** Whether the token is a paired device's, and whether its time has just begun anew, so that the device's own note of it should be renewed. */
	readonly recognise: (token: string | undefined) => { readonly paired: boolean; readonly renewed: boolean };
	/** Oldest first. */
	readonly devices: () => readonly PairedDevice[];
	/** False where there is no such device. */
	readonly unpair: (id: string) => Promise<boolean>;
	readonly unpairAll: () => Promise<void>;
	/** Names and addresses of this computer on the local network, lower case. */
	readonly names: () => readonly string[];
};

/** Numbers by which other devices of the local network reach this computer (IPv4: short enough to type). */
export const networkAddresses = (): readonly string[] =>
	Object.values(networkInterfaces())
		.flatMap((list) => list ?? [])
		.filter(({ family, internal }) => family === 'IPv4' && !internal)
		.map(({ address }) => address);

const ownNames = (): readonly string[] => [
	hostname().toLowerCase(),
	`${hostname().toLowerCase()}.local`,
	...Object.values(networkInterfaces())
		.flatMap((list) => list ?? [])
		.map((net) => (net.family === 'IPv6' ? `[${net.address.toLowerCase()}]` : net.address)),
];

/** Opens the door to devices paired earlier. `now` in milliseconds; `report` hears of notes that could not be written. */
export async function createSharing(settings: {
	readonly records: PairingRecords;
	readonly now: () => number;
	readonly report: (error: unknown) => void;
}): Promise<Sharing> {
	const { records, now, report } = settings;
	const code = createPairingCode(now);
	const isOver = ({ seenAt }: Pairing) => now() - Date.parse(seenAt) > UNUSED_LIFETIME_S * 1000;
	const pairings = new Map((await records.list()).map((pairing) => [pairing.tokenHash, pairing]));
	/** When each was last seen, in milliseconds: newer than what is written down. */
	const seen = new Map<string, number>();

	async function forget(gone: readonly Pairing[]): Promise<void> {
		for (const { tokenHash } of gone) pairings.delete(tokenHash);
		await records.remove(gone.map(({ id }) => id));
	}
	const current = () => [...pairings.values()].filter((pairing) => !isOver(pairing));
	await forget([...pairings.values()].filter(isOver));

	return {
		code: code.show,
		async pair(given, device) {
			code.use(given);
			const token = newToken();
			const at = new Date(now()).toISOString();
			const pairing = { id: randomUUID(), tokenHash: hashOfToken(token), device, pairedAt: at, seenAt: at };
			await records.add(pairing);
			pairings.set(pairing.tokenHash, pairing);
			return token;
		},
		recognise(token) {
			const pairing = token === undefined ? undefined : pairings.get(hashOfToken(token));
			if (!pairing) return { paired: false, renewed: false };
			if (isOver(pairing)) {
				forget([pairing]).catch(report);
				return { paired: false, renewed: false };
			}
			seen.set(pairing.id, now());
			if (now() - Date.parse(pairing.seenAt) < NOTE_EVERY_MS) return { paired: true, renewed: false };
			const seenAt = new Date(now()).toISOString();
			pairings.set(pairing.tokenHash, { ...pairing, seenAt });
			records.saveSeen(pairing.id, seenAt).catch(report);
			return { paired: true, renewed: true };
		},
		devices: () =>
			current().map(({ tokenHash: _secret, ...device }) => {
				const at = seen.get(device.id);
				return at === undefined ? device : { ...device, seenAt: new Date(at).toISOString() };
			}),
		async unpair(id) {
			const gone = current().filter((pairing) => pairing.id === id);
			await forget(gone);
			return gone.length > 0;
		},
		unpairAll: () => forget([...pairings.values()]),
		names: ownNames,
	};
}
