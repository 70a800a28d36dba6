import { connect } from 'node:net';

/** Sends bytes as they are, as no library would, and returns the first line of the answer; '' where the server hangs up or says nothing in time. */
export function rawRequest(port: number, bytes: string | Buffer, timeoutMs = 500): Promise<string> {
	return new Promise((resolve) => {
		const socket = connect(port, '127.0.0.1');
		let said = '';
		const end = () => {
			socket.destroy();
			resolve(said.split('\r\n')[0] ?? '');
		};
		socket.setTimeout(timeoutMs, end);
		socket.on('data', (chunk) => {
			said += chunk.toString('latin1');
			if (said.includes('\r\n')) end();
		});
		socket.on('error', end);
		socket.on('close', end);
		socket.on('connect', () => socket.write(bytes));
	});
}
