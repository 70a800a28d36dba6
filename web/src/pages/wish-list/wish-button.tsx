import { say } from '../../../../src/language/speak.ts';
import { Button } from '../../parts/button.tsx';

type Wishing = { readonly run: (input: undefined) => void; readonly busy: boolean };

/** Wishes for what is missing, unless it is wished for already. */
export const WishButton = ({ wished, wish, label }: { wished: boolean; wish: Wishing; label: string }) =>
	wished ? (
		<span className="italic">{say('wishPage.wished')}</span>
	) : (
		<Button small onPress={() => wish.run(undefined)} isPending={wish.busy} aria-label={label}>
			{say('wishPage.wish')}
		</Button>
	);
