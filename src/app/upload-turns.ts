import { say } from '../language/speak.ts';
import { UserError } from './errors.ts';

/** Uploads on their way at once of one device; each holds a line and a file open. */
const MOST_OF_A_DEVICE = 4;
/** Uploads that wait for their turn; more are sent away at once. */
const MOST_WAITING = 100;
/** How long one waits before it is told to come back. */
const WAIT_MS = 20_000;
const COME_BACK_S = 5;

/** Lets uploads in a few at a time. */
export type UploadTurns = {
	/**
	 * Resolves when the device's turn has come, with the function that ends it. Throws `busy` where it does not come in time; rejects where
	 * `left` is aborted (whoever asked has gone).
	 */
	enter(device: string, left: AbortSignal): Promise<() => void>;
};

type Waiting = { readonly device: string; readonly begin: () => void };

const busy = () =>
	new UserError('busy', say('refusals.tooManyPhotos'), {
		retryAfterS: COME_BACK_S,
	});

function byTimer(run: () => void, ms: number): () => void {
	const timer = setTimeout(run, ms);
	return () => clearTimeout(timer);
}

/** `mostOfAll` = uploads at once of all devices together; `later` calls a function after milliseconds and returns the way to call it off; tests put their own clock here. */
export function createUploadTurns(mostOfAll: number, later: typeof byTimer = byTimer): UploadTurns {
	const running = new Map<string, number>();
	const waiting = new Set<Waiting>();
	const ofAll = () => [...running.values()].reduce((sum, one) => sum + one, 0);
	const hasRoom = (device: string) => ofAll() < mostOfAll && (running.get(device) ?? 0) < MOST_OF_A_DEVICE;

	function advance(): void {
		for (const one of [...waiting]) if (hasRoom(one.device)) one.begin();
	}
	function leave(device: string): void {
		const rest = (running.get(device) ?? 0) - 1;
		if (rest > 0) running.set(device, rest);
		else running.delete(device);
		advance();
	}
	function start(device: string): () => void {
		running.set(device, (running.get(device) ?? 0) + 1);
		let isIn = true;
		return () => {
			if (isIn) leave(device);
			isIn = false;
		};
	}

	const waitForTurn = (device: string, left: AbortSignal): Promise<() => void> =>
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
				resolve(start(device));
			};
			const one: Waiting = { device, begin };
			const callOff = later(() => giveUp(busy()), WAIT_MS);
			left.addEventListener('abort', onLeft);
			waiting.add(one);
		});

	return {
		enter(device, left) {
			if (left.aborted) return Promise.reject(left.reason);
			if (hasRoom(device)) return Promise.resolve(start(device));
			if (waiting.size >= MOST_WAITING) return Promise.reject(busy());
			return waitForTurn(device, left);
		},
	};
}
