/** A fresh key for a request that changes something: sent once more with it, the program answers as before and does nothing. */
export function newRequestKey(): string {
	// `crypto.randomUUID` is missing where the page comes over plain http from the local network.
	const bytes = crypto.getRandomValues(new Uint8Array(16));
	return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

let handed: string | null = null;

/** Runs `send`, whose first request takes this key. */
export function withRequestKey<T>(key: string, send: () => T): T {
	handed = key;
	try {
		return send();
	} finally {
		handed = null;
	}
}

/** The key handed over for the next request, or a fresh one. */
export function takeRequestKey(): string {
	const key = handed ?? newRequestKey();
	handed = null;
	return key;
}
