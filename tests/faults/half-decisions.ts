import type { FastifyInstance } from 'fastify';
import { type DecisionRequest, decisionRequests, type Furnished, NO_DECISION } from '../support/decision-requests.ts';
import { openStage, type Stage } from './decision-stage.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { type StatementWatch, watchStatements } from './statement-watch.ts';

async function send(app: FastifyInstance, method: string, { url, body, headers }: DecisionRequest, key: string) {
	const payload = body === undefined ? {} : { payload: body as object };
	const answer = await app.inject({
		method: method as 'POST',
		url,
		headers: { host: 'localhost:4810', 'idempotency-key': key, ...headers },
		...payload,
	});
	return { status: answer.statusCode, text: answer.payload };
}

const post = (app: FastifyInstance, url: string) => send(app, 'POST', { url }, `setting-up-${url}`);

/** At most `most` places among `count`, the first and the last among them. */
const spread = (count: number, most: number): number[] =>
	count <= most
		? Array.from({ length: count }, (_, index) => index + 1)
		: Array.from({ length: most }, (_, index) => 1 + Math.round((index * (count - 1)) / (most - 1)));

/** What went wrong with one route, a sentence each. */
type Found = {
	readonly half: string[];
	readonly unfinished: string[];
	readonly twice: string[];
	readonly notUndone: string[];
};

/** What of one route was found, and at how many places it was killed. */
async function tryRoute(
	stage: Stage,
	watch: StatementWatch,
	route: string,
	request: DecisionRequest,
	mostKills: number,
	found: Found,
): Promise<number> {
	const method = route.split(' ')[0]!;
	const ask = () => send(stage.app, method, request, 'one-and-the-same');
	const prepare = async () => {
		stage.putBack();
		for (const url of request.before ?? []) await post(stage.app, url);
		stage.startAgain();
	};
	await prepare();
	const before = stage.dump();
	watch.begin();
	const answer = await ask();
	const statements = watch.count();
	if (answer.status >= 300) throw new Error(`${route} was answered ${answer.status}: ${answer.text.slice(0, 300)}`);
	const after = stage.dump();
	if (after.rows === before.rows) throw new Error(`${route} decided nothing`);
	await ask();
	if (stage.dump().rows !== after.rows) found.twice.push(route);
	if (!request.moves) {
		await post(stage.app, '/api/undo');
		if (stage.dump().wardrobe !== before.wardrobe) found.notUndone.push(route);
	}
	await prepare();
	const places = spread(statements, mostKills);
	watch.begin((statement) => places.includes(statement) && stage.keepAs(`killed-${statement}`));
	await ask();
	watch.begin();
	for (const at of places) {
		stage.startFrom(`killed-${at}`);
		const { rows } = stage.dump();
		if (rows !== before.rows && rows !== after.rows) found.half.push(`${route} at statement ${at} of ${statements}`);
		await ask();
		if (stage.dump().rows !== after.rows) found.unfinished.push(`${route} after statement ${at} of ${statements}`);
	}
	return places.length;
}

/** Ids that are worked out, asked of the home itself. */
async function seenIn(stage: Stage) {
	stage.putBack();
	const get = async (url: string) =>
		JSON.parse((await stage.app.inject({ url, headers: { host: 'localhost:4810' } })).payload);
	const report = await get('/api/seasons/s1/report');
	const { palette } = await get('/api/seasons/s1/palette');
	return { gapId: report.gaps[0]?.id as string, colourId: palette.colours[0].id as string };
}

const requestsOn = async (stage: Stage): Promise<Readonly<Record<string, DecisionRequest>>> =>
	decisionRequests(stage.furnished satisfies Furnished, await seenIn(stage));

/**
 * Every route of the running application that decides is killed before its statements, all of them or `mostKills` spread over them: what is then on disk is opened again and holds all of the decision or
 * nothing, and the same request sent again finishes it once. Sent twice it is done once, and one undo takes all of it back.
 */
export async function halfDecisions(mostKills: number): Promise<Figures> {
	const watch = watchStatements();
	const stage = await openStage();
	try {
		const requests = await requestsOn(stage);
		const untold = stage.routes.filter((route) => !requests[route] && !NO_DECISION[route]);
		const found: Found = { half: [], unfinished: [], twice: [], notUndone: [] };
		let killed = 0;
		let tried = 0;
		for (const [route, request] of Object.entries(requests)) {
			if (!stage.routes.includes(route)) throw new Error(`${route} is no route of the application`);
			killed += await tryRoute(stage, watch, route, request, mostKills, found);
			tried++;
		}
		return {
			figures: [
				noneOf('routes that write and that this does not try', untold),
				noneOf(`of ${killed} kills between statements in ${tried} routes, decisions half done`, found.half),
				noneOf('of these, not finished once by the same request sent again', found.unfinished),
				noneOf('decisions made twice by a request sent twice', found.twice),
				noneOf('decisions that one undo does not take back whole', found.notUndone),
				atLeast('kills a route', Math.floor(killed / tried), Math.min(3, mostKills - 1)),
			],
		};
	} finally {
		watch.remove();
		await stage.close();
	}
}
