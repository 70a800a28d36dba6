declare module 's3rver' {
	/** The part of s3rver's interface that the tests use; the package has no types of its own. */
	export default class S3rver {
		constructor(options: {
			address: string;
			port: number;
			silent: boolean;
			directory: string;
			vhostBuckets: boolean;
			configureBuckets: readonly { name: string; configs: readonly string[] }[];
		});
		run(): Promise<{ port: number }>;
		close(): Promise<void>;
		/** There once it runs. */
		readonly httpServer: import('node:http').Server;
	}
}
