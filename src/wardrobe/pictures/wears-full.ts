import { ownFullShare } from '../days/full-share.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { picturesOf } from './picture.ts';

/** Whether dresses and one-pieces are worn at all: of a wardrobe that tells, none of which is one, and a board that shows none, nobody misses one. */
export const wearsFull = ({ garments, inspirations }: Pick<SeasonInput, 'garments' | 'inspirations'>): boolean =>
	ownFullShare(garments) !== 0 ||
	picturesOf(inspirations).some(({ pieces }) => pieces.some(({ slot }) => slot === 'full'));
