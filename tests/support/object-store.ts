import S3rver from 's3rver';
import type { ObjectStoreSettings } from '../../src/store/object-requests.ts';

/** An S3-compatible object store of its own for a test (s3rver, from the npm registry), in a given empty folder. */
export async function startObjectStore(
	folder: string,
): Promise<{ readonly settings: ObjectStoreSettings; stop(): Promise<void> }> {
	const bucket = 'homes';
	const server = new S3rver({
		address: '127.0.0.1',
		port: 0,
		silent: true,
		vhostBuckets: false,
		directory: folder,
		configureBuckets: [{ name: bucket, configs: [] }],
	});
	const { port } = await server.run();
	return {
		settings: {
			endpoint: `http://127.0.0.1:${port}`,
			bucket,
			region: 'us-east-1',
			// The only account that s3rver knows.
			accessKeyId: 'S3RVER',
			secretAccessKey: 'S3RVER',
		},
		async stop() {
			const closed = server.close();
			// Whoever asked may keep a line for its next request.
			server.httpServer.closeAllConnections();
			await closed;
		},
	};
}
