import { UserError } from './errors.ts';

/** Pieces of work of one that wait for their turn; more are sent away at once. */
const MOST_WAITING = 100;
/** How long one waits before it is told to come back. */
const WAIT_MS = 20_000;
const COME_BACK_S = 5;

/** Lets work in a few at a time, so that nobody's stops that of the others. */
export type TurnsOfEach = {
	/**
	 * Resolves when the turn has come of whoever asks, with the function that ends it. Throws `busy` where it does not come in time; rejects where
	 * `left` is aborted (whoever asked has gone).
	 */
	enter(who: string, left: AbortSignal): Promise<() => void>;
};

type Waiting = { readonly who: string; readonly begin: () => void };

function byTimer(run: () => void, ms: number): () => void {
	const timer = setTimeout(run, ms);
	return () => clearTimeout(timer);
}

type TurnSettings = {
	/** Pieces of work at once of one. */
	readonly mostOfOne: number;
	/** The same of all together. */
	readonly mostOfAll: number;
	/** What is said to whoever waits too long. */
	readonly refusal: () => string;
};

/** `later` calls a function after milliseconds and returns the way to call it off; tests put their own clock here. */
export function createTurnsOfEach(
	{ mostOfOne, mostOfAll, refusal }: TurnSettings,
	later: typeof byTimer = byTimer,
): TurnsOfEach {
	const busy = () => new UserError('busy', refusal(), { retryAfterS: COME_BACK_S });
	const running = new Map<string, number>();
	const waiting = new Set<Waiting>();
	const ofAll = () => [...running.values()].reduce((sum, one) => sum + one, 0);
	const hasRoom = (who: string) => ofAll() < mostOfAll && (running.get(who) ?? 0) < mostOfOne;
	const waitingOf = (who: string) => [...waiting].filter((one) => one.who === who).length;

	function advance(): void {
		for (const one of [...waiting]) if (hasRoom(one.who)) one.begin();
	}
	function leave(who: string): void {
		const rest = (running.get(who) ?? 0) - 1;
		if (rest > 0) running.set(who, rest);
		else running.delete(who);
		advance();
	}
	function start(who: string): () => void {
		running.set(who, (running.get(who) ?? 0) + 1);
		let isIn = true;
		return () => {
			if (isIn) leave(who);
			isIn = false;
		};
	}

	const waitForTurn = (who: string, left: AbortSignal): Promise<() => void> =>
		new Promise((resolve, reject) => {
			const stop = () => {
				waiting.delete(one);
				left.removeEventListener('abort', onLeft);
				callOff();
			};
			const giveUp = (reason: unknown) => {
				stop();
				reject(reason);
			};
			const onLeft = () => giveUp(left.reason);
			const begin = () => {
				stop();
				resolve(start(who));
			};
			const one: Waiting = { who, begin };
			const callOff = later(() => giveUp(busy()), WAIT_MS);
			left.addEventListener('abort', onLeft);
			waiting.add(one);
		});

	return {
		enter(who, left) {
			if (left.aborted) return Promise.reject(left.reason);
			if (hasRoom(who)) return Promise.resolve(start(who));
			if (waitingOf(who) >= MOST_WAITING) return Promise.reject(busy());
			return waitForTurn(who, left);
		},
	};
}
