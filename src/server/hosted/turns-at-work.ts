import { availableParallelism } from 'node:os';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { createTurnsOfEach, type TurnsOfEach } from '../../app/turns-of-each.ts';
import { say } from '../../language/speak.ts';

type Work = {
	readonly mostOfOne: number;
	readonly mostOfAll: number;
	readonly routes: readonly string[];
	/** The turn lasts as long as the line, not as the work. */
	readonly isLine?: true;
};

/** Routes that ask much of this server, by what they ask, and how many requests of one person and of all it works on at once. */
const WORK: readonly Work[] = [
	{
		// A photo's pixels, read again in this server's readers; each holds its original, up to 60 MB, while it waits for one.
		mostOfOne: 2,
		mostOfAll: 16,
		routes: ['GET /api/photos/:id/at', 'POST /api/photos/:id/light-trial'],
	},
	{
		// A line-up proven: a solver in a thread of its own for up to a quarter of a minute.
		mostOfOne: 1,
		mostOfAll: availableParallelism(),
		routes: ['POST /api/seasons/:id/line-up/build'],
	},
	{
		// What is judged, of small homes on the one thread that answers everybody, of large ones in the few threads that all share; and whole tables, on that one thread.
		mostOfOne: 2,
		mostOfAll: Number.POSITIVE_INFINITY,
		routes: [
			'GET /api/seasons/:id/report',
			'GET /api/seasons/:id/partners',
			'GET /api/seasons/:id/pocket',
			'GET /api/candidates/:id/check',
			'GET /api/everything.json',
			'POST /api/seasons/:id/line-up/swaps',
			'POST /api/seasons/:id/line-up/what-if',
			'POST /api/seasons/:id/palette/derive',
			'POST /api/garments/import',
			'POST /api/wears/import',
			'POST /api/demo',
		],
	},
	{
		// A whole home on its way out, however slowly it is taken.
		mostOfOne: 2,
		mostOfAll: Number.POSITIVE_INFINITY,
		routes: ['GET /api/backup'],
	},
	{
		// A whole home on its way in: up to 64 GB on the disk of this machine, and as much again unpacked.
		mostOfOne: 1,
		mostOfAll: 4,
		routes: ['POST /api/host/homes/bring'],
	},
	{
		// Windows that listen for news: each is asked about in the database at every change.
		mostOfOne: 32,
		mostOfAll: Number.POSITIVE_INFINITY,
		routes: ['GET /api/events'],
		isLine: true,
	},
];

/** All of them, by method and the exact name under which they are registered. */
export const ROUTES_WITH_TURNS: ReadonlySet<string> = new Set(WORK.flatMap(({ routes }) => routes));

/** One request's turn: `end` may be called several times. */
type Turn = { readonly left: AbortSignal; isAtWork: boolean; readonly end: () => void };

/**
 * Lets each person's requests for much work in a few at a time, so that they never stop those of the others. A turn is taken before the request's body is read and
 * ends with the work, not with the line: whoever leaves in the middle begins no more by it.
 */
export function turnsAtWork(app: FastifyInstance) {
	const turnsOf = new Map<string, TurnsOfEach>();
	const lines = new Set<string>();
	for (const { routes, isLine, mostOfOne, mostOfAll } of WORK) {
		const turns = createTurnsOfEach({ mostOfOne, mostOfAll, refusal: () => say('hosting.tooMuchAtOnce') });
		for (const route of routes) {
			turnsOf.set(route, turns);
			if (isLine) lines.add(route);
		}
	}
	const taken = new WeakMap<FastifyRequest, Turn>();
	app.addHook('onRoute', (route) => {
		const { handler } = route;
		const name = `${route.method} ${route.url}`;
		if (!turnsOf.has(name) || lines.has(name)) return;
		route.handler = async function worked(request, reply) {
			const turn = taken.get(request);
			if (!turn) throw new TypeError('work was begun without its turn');
			// Nobody waits for it any more.
			if (turn.left.aborted) return reply;
			turn.isAtWork = true;
			try {
				return await handler.call(this, request, reply);
			} finally {
				turn.end();
			}
		};
	});
	return {
		/** Waits for the turn of whoever asks, where the route needs one. */
		async take(request: FastifyRequest, reply: FastifyReply, route: string, who: string): Promise<void> {
			// What is asked for without its body is worked out all the same.
			const turns = turnsOf.get(route.replace(/^HEAD /, 'GET '));
			if (!turns) return;
			const leaving = new AbortController();
			reply.raw.once('close', () => leaving.abort());
			const turn: Turn = { left: leaving.signal, isAtWork: false, end: await turns.enter(who, leaving.signal) };
			taken.set(request, turn);
			leaving.signal.addEventListener('abort', () => turn.isAtWork || turn.end());
			// It left just as its turn came.
			if (leaving.signal.aborted) turn.end();
		},
	};
}
