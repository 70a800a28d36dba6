import { type QrPicture, qrPicture } from './qr-picture.ts';
import { networkAddresses, type PairedDevice, type Sharing } from './sharing.ts';

/** What the computer shows of its door: closed, or the code, the addresses to open on a phone, and who came in. */
export type Door =
	| { readonly shared: false }
	| {
			readonly shared: true;
			readonly code: string;
			readonly validForMs: number;
			readonly addresses: readonly { readonly address: string; readonly qr: QrPicture }[];
			/** Oldest first. */
			readonly devices: readonly PairedDevice[];
	  };

/** The door as it stands now; `port` is where the program listens. */
export function doorOf(sharing: Sharing | null, port: number | undefined): Door {
	if (!sharing) return { shared: false };
	const addresses = networkAddresses().map((number) => {
		const address = `http://${number}:${port}/`;
		return { address, qr: qrPicture(address) };
	});
	return { shared: true, ...sharing.code(), addresses, devices: sharing.devices() };
}
