/** Where the routes of a home lie (ends with a slash), and who asks there. */
export type HomeAddress = { readonly api: string; readonly headers: Readonly<Record<string, string>> };

/** Sends a garment's photo. Throws where it is not taken. */
export async function sendPhoto({ api, headers }: HomeAddress, bytes: Buffer): Promise<void> {
	const body = new FormData();
	body.append('purpose', 'garment');
	body.append('file', new Blob([new Uint8Array(bytes)]), 'photo');
	const { status } = await fetch(`${api}photos`, { method: 'POST', headers, body });
	if (status !== 202) throw new Error(`expected 202 for a photo, received ${status}`);
}

/** Photos that wait or are being read. */
export async function photosWaiting({ api, headers }: HomeAddress): Promise<number> {
	const { photos } = (await (await fetch(`${api}status`, { headers })).json()) as { photos: { waiting: number } };
	return photos.waiting;
}
