import { fileURLToPath } from 'node:url';
import { freePort } from '../tests/support/free-port.ts';
import { type Program, saying, startScript } from '../tests/support/program.ts';

const PROGRAM = fileURLToPath(new URL('../bin/dyelot.mjs', import.meta.url));

/** What the processes of one host are told. */
export type HostEnvironment = {
	readonly DYELOT_DATABASE: string;
	readonly DYELOT_PHOTOS: string;
	readonly DYELOT_WORK_FOLDER: string;
};

/** A server of a host, ready to be asked. */
export type HostProcess = { readonly program: Program; readonly origin: string };

/** Starts `dyelot host` on a free port. */
export async function startHost(environment: HostEnvironment): Promise<HostProcess> {
	const port = await freePort();
	const program = startScript(PROGRAM, ['host', '--port', String(port)], environment);
	await program.line(saying(/^ready$/));
	return { program, origin: `http://localhost:${port}` };
}

/** Starts `dyelot work`, which reads one photo at a time. */
export async function startReader(environment: HostEnvironment): Promise<Program> {
	const program = startScript(PROGRAM, ['work', '--at-once', '1'], environment);
	await program.line(saying(/^ready$/));
	return program;
}
