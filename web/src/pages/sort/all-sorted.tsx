import { say } from '../../../../src/language/speak.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { TakeBack } from './take-back.tsx';
import type { Sorting } from './use-sorting.ts';

/** The end of a round: nothing is left to decide. */
export function AllSorted({ sorting }: { sorting: Sorting }) {
	return (
		<Empty title={say('sort.allSorted')}>
			<p>{say('sort.allSortedHow')}</p>
			<div className="row">
				<TakeBack sorting={sorting} />
				<Button onPress={sorting.beginAgain}>{say('sort.again')}</Button>
			</div>
		</Empty>
	);
}
