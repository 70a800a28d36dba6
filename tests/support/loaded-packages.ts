// Serves a home as `dyelot serve` does, asks it once, and prints which packages this process has loaded by then.
import { register } from 'node:module';
import { MessageChannel } from 'node:worker_threads';

const seen = new Set<string>();
const note = (address: string) => {
	const name = /\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(address.replaceAll('\\', '/'))?.[1];
	if (name) seen.add(name);
};

/** ES modules are loaded in a thread of their own: it tells each address. */
const { port1, port2 } = new MessageChannel();
port1.on('message', note);
port1.unref();
const hooks = `
	let port;
	export const initialize = (data) => { port = data.port; };
	export async function load(address, context, next) { port.postMessage(address); return next(address, context); }`;
register(`data:text/javascript,${encodeURIComponent(hooks)}`, { data: { port: port2 }, transferList: [port2] });

const { serve } = await import('../../src/server/serve.ts');
const server = await serve({ homePath: process.argv[2]!, port: 0, share: false, log: () => {} });
await fetch(`${server.address}api/seasons`);
await server.close();
await new Promise((resolve) => setImmediate(resolve));
const { default: Module } = await import('node:module');
for (const path of Object.keys((Module as unknown as { _cache: object })._cache)) note(path);
process.stdout.write(JSON.stringify([...seen].sort()));
process.exit(0);
