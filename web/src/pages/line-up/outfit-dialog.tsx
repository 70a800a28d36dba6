import { say } from '../../../../src/language/speak.ts';
import type { PairTable } from '../../../../src/wardrobe/pairs/pair-table.ts';
import type { PairWord } from '../../../../src/wardrobe/words/wear.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Problem } from '../../parts/problem.tsx';
import { FlatLay } from './flat-lay.tsx';

type Word = { readonly a: string; readonly b: string; readonly word: PairWord['word'] | null };

/** One outfit and what speaks for each of its pairs; the user's own word wins over all of it. */
export function OutfitDialog({
	table,
	pieces,
	pairWords,
	onClose,
}: {
	table: PairTable;
	pieces: readonly number[];
	pairWords: readonly PairWord[];
	onClose: () => void;
}) {
	const tell = useChange((word: Word) => call('sayOfPair', { body: word }));
	const wordOf = (a: string, b: string) =>
		pairWords.find((one) => (one.garmentA === a && one.garmentB === b) || (one.garmentA === b && one.garmentB === a))
			?.word ?? null;
	const pairs = pieces.flatMap((one, index) => pieces.slice(index + 1).map((other) => [one, other] as const));
	return (
		<Dialog title={say('outfits.one')} onClose={onClose}>
			<div className="outfit-columns">
				<FlatLay pieces={pieces.map((piece) => table.garments[piece]!)} />
				<ul className="stack">
					{pairs.map(([one, other]) => {
						const a = table.garments[one]!;
						const b = table.garments[other]!;
						const names = { one: a.name, other: b.name };
						const word = wordOf(a.id, b.id);
						const toggle = (next: PairWord['word']) =>
							tell.run({ a: a.id, b: b.id, word: word === next ? null : next });
						return (
							<li key={`${a.id} ${b.id}`} className="pair">
								<h3>{say('outfits.with', names)}</h3>
								<p className="small">{table.sentence(one, other)}</p>
								<span className="row">
									<Button
										small
										pressed={word === 'approved'}
										onPress={() => toggle('approved')}
										aria-label={say('outfits.approveNamed', names)}
									>
										{say(word === 'approved' ? 'outfits.approved' : 'outfits.approve')}
									</Button>
									<Button
										small
										pressed={word === 'refused'}
										onPress={() => toggle('refused')}
										aria-label={say('outfits.refuseNamed', names)}
									>
										{say(word === 'refused' ? 'outfits.refused' : 'outfits.refuse')}
									</Button>
								</span>
							</li>
						);
					})}
				</ul>
			</div>
			<Problem of={tell.problem} />
		</Dialog>
	);
}
