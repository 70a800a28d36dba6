import { say } from '../../../../src/language/speak.ts';
import type { Gap } from '../../../../src/wardrobe/gaps/gap.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { isWished } from '../../../../src/wardrobe/wishes/is-wished.ts';
import { colourWord } from '../../../../src/wardrobe/words/palette-colour.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { useGarments } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { Problem } from '../../parts/problem.tsx';
import { Swatch } from '../../parts/swatch.tsx';
import { WishButton } from './wish-button.tsx';

function GapRow({ gap, report, wished }: { gap: Gap; report: Report; wished: boolean }) {
	const colour = report.palette.colours.find(({ id }) => id === gap.paletteColourId);
	const name = gap.kind === 'colour' && colour ? colourWord(colour) : say(`slots.${gap.slot}`);
	const wish = useChange(() => call('wishForGap', { params: { id: report.season.id }, body: { gapId: gap.id } }));
	const { data: garments = [] } = useGarments();
	const fetchStored = useChange(() =>
		changeThing('changeGarment', gap.storedFirst ?? '', garments.find(({ id }) => id === gap.storedFirst) ?? {}, {
			place: 'rail',
		}),
	);
	return (
		<li className="gap">
			{colour ? (
				<Swatch
					lab={colour.lab}
					label={colour.label}
					note={
						gap.kind === 'slot'
							? say('wishList.addsMost', { slot: say(`slots.${gap.slot}`) })
							: say(`slots.${gap.slot}`)
					}
				/>
			) : (
				<strong>{say(`slots.${gap.slot}`)}</strong>
			)}
			<p>{gap.sentence}</p>
			<span className="row">
				<WishButton
					wished={wished}
					wish={wish}
					label={say('wishList.wishFor', { slot: say(`slots.${gap.slot}`), colour: name })}
				/>
				{gap.storedFirst ? (
					<Button small onPress={() => fetchStored.run(undefined)} isPending={fetchStored.busy}>
						{say('wishList.bringStored')}
					</Button>
				) : null}
			</span>
			<Problem of={wish.problem ?? fetchStored.problem} />
		</li>
	);
}

/** What is missing, what would help most first; one press makes a gap a wish. */
export function GapList({ report, wishes }: { report: Report; wishes: readonly Wish[] }) {
	// The pieces that pictures ask for have a list of their own.
	const gaps = report.gaps.filter(({ kind }) => kind !== 'piece');
	if (gaps.length === 0) {
		return (
			<Empty title={say('wishList.noGap')}>
				<p>{report.palette.colours.length === 0 ? say('wishList.noGapNoPalette') : say('wishList.noGapCovered')}</p>
			</Empty>
		);
	}
	return (
		<ol className="gap-list">
			{gaps.map((gap) => (
				<GapRow key={gap.id} gap={gap} report={report} wished={isWished(gap, wishes)} />
			))}
		</ol>
	);
}
