import type { FastifyInstance, FastifyLoggerOptions } from 'fastify';

/** Where an error came from, without its message: that may hold what somebody wrote, or whose it is. */
const placesOf = ({ stack = '' }: Error): string[] =>
	stack
		.split('\n')
		.filter((line) => /^\s+at /.test(line))
		.map((line) => line.trim());

/** An error as an operator may read it. */
export const quietError = (error: unknown): object =>
	error instanceof Error
		? { type: error.name, code: (error as { code?: string }).code, at: placesOf(error) }
		: { type: typeof error };

/** Settings of the server's log: lines of JSON that say what happened, never who or what. */
export const quietLog = {
	level: 'info',
	timestamp: () => `,"at":"${new Date().toISOString()}"`,
	serializers: { err: quietError as never, req: () => ({}), res: () => ({}) },
	// Neither the machine's name nor the number of its process.
	base: null as never,
} satisfies FastifyLoggerOptions & Readonly<Record<string, unknown>>;

/** Notes each request by its route as it is registered: its address could name a person, a home or a garment. */
export function noteRequests(app: FastifyInstance): void {
	app.addHook('onResponse', async (request, reply) => {
		const { method, routeOptions } = request;
		const ms = Math.round(reply.elapsedTime);
		request.log.info({ method, route: routeOptions.url ?? null, status: reply.statusCode, ms }, 'answered');
	});
}
