import { useEffect, useRef, useState } from 'react';
import type { LineUpResult } from '../../../../src/wardrobe/line-up/line-up.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';

/** The longest that a proof takes; see `prove-line-up.ts`. */
export const PROOF_SECONDS = 15;

/** Proves a set as it stands: `secondsGone` while it runs, else null; `stop` ends it and leaves everything as it was. */
export function useProof(seasonId: string, onResult: (result: LineUpResult) => void) {
	const [secondsGone, setSecondsGone] = useState<number | null>(null);
	const [problem, setProblem] = useState<{ readonly message: string } | null>(null);
	const running = useRef<AbortController | null>(null);
	const isRunning = secondsGone !== null;
	useEffect(() => {
		if (!isRunning) return;
		const timer = setInterval(() => setSecondsGone((gone) => (gone === null ? null : gone + 1)), 1000);
		return () => clearInterval(timer);
	}, [isRunning]);
	useEffect(() => () => running.current?.abort(), []);
	const start = async (choice: Omit<LineUpChoice, 'seasonId'>) => {
		const own = new AbortController();
		running.current = own;
		setProblem(null);
		setSecondsGone(0);
		try {
			const body = { ...choice, prove: true };
			onResult(await call('buildLineUp', { params: { id: seasonId }, body }, { signal: own.signal }));
		} catch (error) {
			if (!own.signal.aborted) setProblem(error as Error);
		} finally {
			setSecondsGone(null);
		}
	};
	return { secondsGone, problem, start, stop: () => running.current?.abort() };
}

export type Proof = ReturnType<typeof useProof>;
