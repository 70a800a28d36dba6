import { say } from '../language/speak.ts';
/**
 * Opens the page in the person's own browser. Only an address of this machine itself is opened; the library is loaded when it is needed.
 * Throws a `TypeError` for any other address: that would be a fault of ours.
 */
export async function openPage(address: string): Promise<void> {
	const { protocol, hostname } = new URL(address);
	if (protocol !== 'http:' || !['localhost', '127.0.0.1'].includes(hostname))
		throw new TypeError(`Expected an address of this machine to open in the browser; received "${address}".`);
	const { default: open } = await import('open');
	const browser = await open(address);
	// Where no browser can be started the address stands in the terminal: the page is still served.
	browser.on('error', () => console.log(say('cli.noBrowser', { address })));
}
