import { useState } from 'react';
import type { PhotoRecord } from '../../../src/store/store.ts';
import { type Correction, type NeutralPoint, neutralsOf } from '../../../src/wardrobe/words/reading.ts';
import { call } from '../api/call.ts';
import { useChange } from '../api/change.ts';
import { correctPhoto } from '../api/change-thing.ts';

/** A correction without the outline and the ground, which are kept apart. */
type LightCorrection = Omit<Correction, 'mask' | 'ground'>;

/** From this lightness on a neutral counts as white: one white and one grey can be kept together. */
const isWhite = ({ lightness }: NeutralPoint): boolean => (lightness ?? 95) >= 88;

/** The light of a photo while it is put right: what is kept, what is being tried out, and the way back. */
export function useLight(photo: PhotoRecord) {
	const { correction } = photo;
	const { mask: _kept, ground: _beside, neutral: _older, ...own } = correction;
	const [before, setBefore] = useState<readonly LightCorrection[]>([]);
	const [tried, setTried] = useState<readonly NeutralPoint[]>([]);
	const save = useChange((next: LightCorrection) =>
		correctPhoto(photo, (version) => call('correctPhoto', { params: { id: photo.id }, body: { ...next, version } })),
	);
	const tryOut = useChange(
		(neutrals: readonly NeutralPoint[]) => call('tryLight', { params: { id: photo.id }, body: { neutrals } }),
		(_, neutrals) => setTried(neutrals),
	);
	const trial = tryOut.output ?? null;
	const change = (next: LightCorrection) => {
		setBefore([...before, own]);
		save.run(next);
	};
	const dropTrial = () => {
		tryOut.reset();
		setTried([]);
	};
	return {
		own,
		trial,
		isTrying: tryOut.busy,
		isSaving: save.busy,
		problem: save.problem ?? tryOut.problem,
		/** The neutrals on view: those being tried, else those kept. */
		shown: trial ? tried : neutralsOf(correction),
		change,
		/** Tries a neutral out; the other kind stays: a white and a grey together tell most. */
		tryNeutral: (point: NeutralPoint) =>
			tryOut.run([...neutralsOf(correction).filter((one) => isWhite(one) !== isWhite(point)), point]),
		keepTrial: () => {
			const neutrals = tried.flatMap((point, index) => {
				const answer = trial?.neutrals[index]?.answer;
				return answer === 'refused' ? [] : [answer === 'asked' ? { ...point, sure: true } : point];
			});
			change({ ...own, neutrals });
			dropTrial();
		},
		dropTrial,
		canStepBack: before.length > 0,
		stepBack: () => {
			const last = before.at(-1);
			if (!last) return;
			save.run(last);
			setBefore(before.slice(0, -1));
		},
		isCorrected: Object.keys(own).length > 0,
		takeBack: () => change({}),
	};
}

export type LightInHand = ReturnType<typeof useLight>;
