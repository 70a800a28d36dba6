import { useState } from 'react';
import type { LineUpResult } from '../../../../src/wardrobe/line-up/line-up.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { queries, queryOf } from '../../api/refresh.ts';
import { useLineUp } from '../../api/wardrobe.ts';
import { useProof } from './proof.ts';
import type { SetChanges } from './set-changes.ts';

/** The season's set as it is chosen, and all that changes it. A change is shown at once; what the program then says replaces it. */
export function useSet(seasonId: string) {
	const params = { id: seasonId };
	const { data: choice, error } = useLineUp(seasonId);
	const [result, setResult] = useState<LineUpResult | null>(null);
	const fixed = { mustKeep: choice?.mustKeep ?? [], neverUse: choice?.neverUse ?? [] };
	const save = useChange((next: SetChanges) => {
		queries.setQueryData<LineUpChoice>(queryOf('getLineUp', { params }).queryKey, (old) => old && { ...old, ...next });
		return changeThing('chooseLineUp', seasonId, choice ?? {}, next);
	});
	const build = useChange(async () => {
		const built = await call('buildLineUp', { params, body: fixed });
		await changeThing('chooseLineUp', seasonId, choice ?? {}, { garmentIds: built.garmentIds });
		return built;
	}, setResult);
	const proof = useProof(seasonId, setResult);
	return {
		choice,
		error,
		result,
		problem: build.problem ?? save.problem ?? proof.problem,
		building: build.busy,
		build: () => build.run(undefined),
		proof,
		prove: () => proof.start({ ...fixed, garmentIds: choice?.garmentIds ?? [] }),
		change: (next: SetChanges) => {
			setResult(null);
			save.run(next);
		},
		takeBetter: (better: LineUpResult) => {
			save.run({ garmentIds: better.garmentIds });
			setResult({ ...better, better: null });
		},
	};
}
