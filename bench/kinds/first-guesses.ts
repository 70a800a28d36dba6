import type { PieceKinds } from '../../src/reading/kinds/kind-probabilities.ts';

/** One piece whose kind is known, and what was said of it. */
export type Guessed = { readonly truth: string; readonly told: PieceKinds };

/** Kinds that many people would not tell apart either. */
const JOINED: Readonly<Record<string, string>> = { blazer: 'coat', jacket: 'coat', cardigan: 'coat', top: 't-shirt' };
const joined = (kind: string): string => JOINED[kind] ?? kind;

/** Kinds by falling probability, those that are one kind here added up. */
function ranked({ kinds }: PieceKinds, name: (kind: string) => string): string[] {
	const sums = new Map<string, number>();
	for (const { kind, probability } of kinds) sums.set(name(kind), (sums.get(name(kind)) ?? 0) + probability);
	return [...sums].sort((a, b) => b[1] - a[1]).map(([kind]) => kind);
}

const first = ({ kinds }: PieceKinds) => kinds[0]?.probability ?? 0;
const isRight = ({ truth, told }: Guessed): boolean => told.kinds[0]?.kind === truth;
const share = (guesses: readonly Guessed[], test: (one: Guessed) => boolean): number =>
	guesses.filter(test).length / guesses.length;

/** Shares of the pieces that are right at the first guess and within two, 0..1; the same with kinds joined that are alike. */
export const rightShares = (guesses: readonly Guessed[]) => {
	const within = (count: number, name: (kind: string) => string) =>
		share(guesses, ({ truth, told }) => ranked(told, name).slice(0, count).includes(name(truth)));
	const plain = (kind: string) => kind;
	return {
		first: within(1, plain),
		two: within(2, plain),
		joinedFirst: within(1, joined),
		joinedTwo: within(2, joined),
	};
};

/** What is said from a probability on: the share of the pieces it is said of, and how much of that is right. */
export function saidFrom(guesses: readonly Guessed[], least: number): { share: number; right: number } {
	const said = guesses.filter(({ told }) => first(told) >= least);
	return { share: said.length / guesses.length, right: share(said, isRight) };
}

/** The lowest probability from which on this share of what is said is right, and at every higher one too; 1 where there is none. */
export function leastFor(guesses: readonly Guessed[], right: number): number {
	const surest = [...guesses].sort((a, b) => first(b.told) - first(a.told));
	let hits = 0;
	let least = 1;
	for (const [index, one] of surest.entries()) {
		if (isRight(one)) hits++;
		if (hits / (index + 1) >= right) least = first(one.told);
	}
	return least;
}

/** Pairs taken for each other most often: "truth as told", commonest first. */
export function commonestErrors(guesses: readonly Guessed[], count: number): [string, number][] {
	const errors = new Map<string, number>();
	for (const one of guesses) {
		if (isRight(one)) continue;
		const pair = `${one.truth} as ${one.told.kinds[0]?.kind ?? 'nothing'}`;
		errors.set(pair, (errors.get(pair) ?? 0) + 1);
	}
	return [...errors].sort((a, b) => b[1] - a[1]).slice(0, count);
}
