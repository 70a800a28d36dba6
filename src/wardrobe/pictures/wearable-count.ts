import type { Garment } from '../words/garment.ts';
import type { Picture } from './picture.ts';
import { answersTo } from './piece-answer.ts';

/** Whether every piece can be given a garment of its own (augmenting paths, Kuhn 1955); `has` says which garments, by index, are in the set. */
export function allMatched(options: readonly (readonly number[])[], has: (garment: number) => boolean): boolean {
	const holder = new Map<number, number>();
	const place = (piece: number, tried: Set<number>): boolean => {
		for (const garment of options[piece]!) {
			if (tried.has(garment) || !has(garment)) continue;
			tried.add(garment);
			const before = holder.get(garment);
			if (before === undefined || place(before, tried)) {
				holder.set(garment, piece);
				return true;
			}
		}
		return false;
	};
	return options.every((_, piece) => place(piece, new Set()));
}

/** For each picture, for each of its pieces (accessories apart), the garments, by index, that have it or come near to it. */
export const answeringGarments = (pictures: readonly Picture[], garments: readonly Garment[]): number[][][] =>
	pictures.map((picture) =>
		picture.pieces.map((piece) => {
			const answerOf = answersTo(piece, picture.trust);
			return garments.flatMap((garment, index) =>
				(answerOf(garment)?.degree ?? 'missing') === 'missing' ? [] : [index],
			);
		}),
	);
