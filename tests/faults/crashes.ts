import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';
import { spoken } from '../../src/language/kept-sentence.ts';
import { openHome } from '../../src/store/open-home.ts';
import { after, EMPTY_HOME, type Expected, heldBy, heldWhen, stepsOfRound } from './life-of-a-home.ts';

/** What many kills of a program at work did to a home. */
export type CrashFigures = {
	readonly kills: number;
	/** Of those, with loss of what was not yet synced. */
	readonly powerCuts: number;
	readonly acknowledged: number;
	/** Homes that no longer open or hold something else than what was acknowledged, one sentence each. */
	readonly faults: readonly string[];
	/** Times that start-up moved a photo of an unacknowledged import to `found`. */
	readonly orphansFound: number;
};

const CHILD = fileURLToPath(new URL('crash-child.ts', import.meta.url));

/** Runs one round until it dies at the given step; returns what it said, and whether it was killed. */
function liveAndDie(homePath: string, round: number, dieAt: number, powerCut: boolean) {
	const words = ['--import', 'tsx', CHILD, homePath, String(round), String(dieAt), powerCut ? 'power-cut' : 'kill'];
	const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] });
	let said = '';
	let complaints = '';
	child.stdout.on('data', (chunk) => {
		said += chunk;
	});
	child.stderr.on('data', (chunk) => {
		complaints += chunk;
	});
	return new Promise<{ said: string; killed: boolean; complaints: string }>((resolve) => {
		child.once('close', (code, signal) =>
			resolve({ said, killed: signal === 'SIGKILL', complaints: code ? complaints : '' }),
		);
	});
}

/** What the home must hold: all that was acknowledged, and the step under way either done or not begun. */
function allowed(before: Expected, round: number, said: string): { states: Expected[]; acknowledged: number } {
	const done = said.match(/^done /gm)?.length ?? 0;
	const begun = said.match(/^begun /gm)?.length ?? 0;
	const steps = stepsOfRound(round);
	let state = before;
	for (const step of steps.slice(0, done)) state = after(state, step);
	return { states: begun > done ? [state, after(state, steps[done]!)] : [state], acknowledged: done };
}

/** How many steps a whole round in a new home has. */
export async function stepsInRound(homePath: string): Promise<number> {
	const { said } = await liveAndDie(homePath, 0, -1, false);
	return Number(/^steps (\d+)$/m.exec(said)?.[1]);
}

/**
 * Kills a program in the middle of imports and decisions, again and again on the same home, at the steps given (every second time with
 * loss of unsynced pages), and compares what the home holds after each with what was acknowledged.
 */
export async function crashAgainAndAgain(homePath: string, dieAtSteps: readonly number[]): Promise<CrashFigures> {
	let expected = EMPTY_HOME;
	let [kills, powerCuts, acknowledged, orphansFound] = [0, 0, 0, 0];
	const faults: string[] = [];
	for (const [index, dieAt] of dieAtSteps.entries()) {
		const round = index + 1;
		const powerCut = index % 2 === 1;
		const { said, killed, complaints } = await liveAndDie(homePath, round, dieAt, powerCut);
		if (killed) kills++;
		if (killed && powerCut) powerCuts++;
		const where = `round ${round}, ${powerCut ? 'power cut' : 'kill'} at step ${dieAt}`;
		if (complaints) faults.push(`${where}: the program failed: ${complaints.slice(-400)}`);
		const { states, acknowledged: done } = allowed(expected, round, said);
		acknowledged += done;
		try {
			const home = await openHome(homePath, { now: () => new Date('2026-03-01T09:00:00.000Z') });
			const held = await heldBy(home.store);
			const findings = home.findings.map(spoken).filter((sentence) => !sentence.includes('belonged to no photo'));
			orphansFound += home.findings.length - findings.length;
			await home.close();
			if (findings.length > 0) faults.push(`${where}: ${findings.join(' ')}`);
			const state = states.find((one) => isDeepStrictEqual(plain(heldWhen(one)), plain(held)));
			if (!state) faults.push(`${where}: what was acknowledged is not what is there`);
			expected = state ?? states[0]!;
		} catch (error) {
			faults.push(`${where}: ${(error as Error).message}`);
			break;
		}
	}
	return { kills, powerCuts, acknowledged, faults, orphansFound };
}

/** Without the null prototypes of rows and the order of keys. */
const plain = (value: unknown): unknown =>
	JSON.parse(
		JSON.stringify(value, (_key, one: unknown) =>
			one && typeof one === 'object' && !Array.isArray(one)
				? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)))
				: one,
		),
	);
