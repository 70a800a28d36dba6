import { say } from '../../../../src/language/speak.ts';
import { Button } from '../../parts/button.tsx';
import type { Sorting } from './use-sorting.ts';

/** Takes the last decision of this visit back, be it about one garment or many. */
export function TakeBack({ sorting }: { sorting: Sorting }) {
	return (
		<Button onPress={sorting.takeBack} isDisabled={!sorting.canTakeBack}>
			{say('sort.takeBack')} <kbd>U</kbd>
		</Button>
	);
}
