import { useEffect, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { Empty } from '../../parts/empty.tsx';
import { GarmentJudgement } from '../../parts/garment-judgement.tsx';
import { GarmentPhoto } from '../../parts/garment-photo.tsx';
import { Problem } from '../../parts/problem.tsx';
import { SwatchStrip } from '../../parts/swatch.tsx';
import { PLACE_OF, type SortItem, type SortWord } from './sort-order.ts';
import { useRound } from './use-round.ts';

const WORDS: readonly { readonly word: SortWord; readonly name: string; readonly key: string }[] = [
	{ word: 'keep', name: 'Keep on the rail', key: '1' },
	{ word: 'store', name: 'Store', key: '2' },
	{ word: 'let-go', name: 'Let go', key: '3' },
];

type Step = { readonly garment: Garment };

const isTyping = (target: EventTarget | null) =>
	target instanceof HTMLElement && /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName);

/** One garment at a time, big, with the reasons: keys 1, 2, 3 decide, U takes the last one back, S skips. */
export function OneByOne({ items, report }: { items: readonly SortItem[]; report: Report }) {
	const { decided, save } = useRound(report.season.id);
	const [steps, setSteps] = useState<readonly Step[]>([]);
	const [skipped, setSkipped] = useState<readonly string[]>([]);
	const left = items.filter(({ garment }) => !decided.includes(garment.id));
	const item = left.find(({ garment }) => !skipped.includes(garment.id)) ?? left[0];
	const place = useChange(({ garment, changes }: { garment: Garment; changes: Pick<Garment, 'place' | 'wayOut'> }) =>
		changeThing('changeGarment', garment.id, garment, changes),
	);

	const decide = (word: SortWord) => {
		if (!item) return;
		const { garment, said } = item;
		place.run({
			garment,
			changes: { place: PLACE_OF[word], wayOut: word === 'let-go' ? (garment.wayOut ?? said.sorting.wayOut) : null },
		});
		save([...decided, garment.id]);
		setSteps([...steps, { garment }]);
	};
	const undo = () => {
		const last = steps.at(-1);
		if (!last) return;
		const { id, place: before, wayOut } = last.garment;
		place.run({ garment: last.garment, changes: { place: before, wayOut } });
		save(decided.filter((one) => one !== id));
		setSteps(steps.slice(0, -1));
	};
	const skip = () => item && setSkipped([...skipped.filter((id) => id !== item.garment.id), item.garment.id]);

	useEffect(() => {
		const onKey = (event: KeyboardEvent) => {
			if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
			const word = WORDS.find(({ key }) => key === event.key)?.word;
			if (word) decide(word);
			else if (event.key === 'u') undo();
			else if (event.key === 's') skip();
		};
		document.addEventListener('keydown', onKey);
		return () => document.removeEventListener('keydown', onKey);
	});

	const done = items.length - left.length;
	const progress = (
		<div>
			<p role="status">
				{done} of {items.length} decided
			</p>
			<progress value={done} max={items.length} aria-label="Garments decided" />
		</div>
	);
	const undoButton = (
		<Button onPress={undo} isDisabled={steps.length === 0}>
			Take the last one back <kbd>U</kbd>
		</Button>
	);
	if (!item) {
		return (
			<div className="stack">
				{progress}
				<Empty title="All sorted">
					<p>Every garment has its place. The Line-up chooses from what is on the rail.</p>
					<div className="row">
						{undoButton}
						<Button onPress={() => save([])}>Go through them again</Button>
					</div>
				</Empty>
			</div>
		);
	}
	const { garment, said } = item;
	return (
		<section className="stack" aria-label="One garment at a time">
			{progress}
			<div className="sort-one">
				<GarmentPhoto garment={garment} picture="display" alt={garment.name} shape="square" />
				<div className="stack">
					<div>
						<h2>{garment.name}</h2>
						<p className="quiet">
							{say(`kinds.${garment.kind}`)}, now {garment.place}
						</p>
					</div>
					<SwatchStrip swatches={garment.swatches} label={`Colours of ${garment.name}`} />
					<div className="sort-suggestion">
						<p className="italic">Suggested</p>
						<p>{said.sorting.sentence}</p>
					</div>
					<fieldset className="row">
						<legend className="hidden-visually">Your decision</legend>
						{WORDS.map(({ word, name, key }) => (
							<Button
								key={word}
								look={said.sorting.suggestion === word ? 'main' : 'plain'}
								onPress={() => decide(word)}
							>
								{name} <kbd>{key}</kbd>
							</Button>
						))}
					</fieldset>
					<div className="row">
						{undoButton}
						<Button look="bare" onPress={skip}>
							Decide later <kbd>S</kbd>
						</Button>
					</div>
					<Problem of={place.problem} />
					<GarmentJudgement said={said} garment={garment} report={report} />
				</div>
			</div>
		</section>
	);
}
