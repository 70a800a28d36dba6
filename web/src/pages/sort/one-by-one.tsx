import { useEffect, useRef, useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import { fetchPictureEarly } from '../../api/pictures.ts';
import { Button } from '../../parts/button.tsx';
import { GarmentJudgement } from '../../parts/garment-judgement.tsx';
import { OneGarment } from './one-garment.tsx';
import { useKeys } from './sort-keys.ts';
import type { SortItem, SortWord } from './sort-order.ts';
import { TakeBack } from './take-back.tsx';
import type { Sorting } from './use-sorting.ts';

const WORDS = [
	{ word: 'keep', name: 'sort.keep', key: '1' },
	{ word: 'store', name: 'sort.store', key: '2' },
	{ word: 'let-go', name: 'sort.letGo', key: '3' },
] as const;

/** Narrower than this a screen has no room for the page's head beside a photo; as in sort.css. */
const PHONE_BELOW_PX = 704;

/** One garment at a time, big, with the reasons: keys 1, 2, 3 decide, U takes the last one back, S skips. At least one must be left. */
export function OneByOne({ left, report, sorting }: { left: readonly SortItem[]; report: Report; sorting: Sorting }) {
	const [skipped, setSkipped] = useState<readonly string[]>([]);
	const waiting = left.filter(({ garment }) => !skipped.includes(garment.id));
	const item = (waiting[0] ?? left[0])!;
	const { garment, said } = item;
	const next = waiting[1]?.garment;
	const nextPhoto = next && next.swatches.length > 0 ? next.photoIds[0] : undefined;
	useEffect(() => fetchPictureEarly(nextPhoto, 'display'), [nextPhoto]);

	// Photo and decisions fit one screen of a phone from here on down.
	const place = useRef<HTMLElement>(null);
	useEffect(() => {
		if (innerWidth < PHONE_BELOW_PX) place.current?.scrollIntoView({ block: 'start' });
	}, []);

	const decide = (word: SortWord) => sorting.decide([item], word);
	const skip = () => setSkipped([...skipped.filter((id) => id !== garment.id), garment.id]);
	useKeys({
		1: () => decide('keep'),
		2: () => decide('store'),
		3: () => decide('let-go'),
		u: sorting.takeBack,
		s: skip,
	});
	return (
		<section ref={place} className="sort-one" aria-label={say('sort.oneByOne')}>
			{/* Photo and words are one thing: they change together. */}
			<OneGarment key={garment.id} item={item} />
			<fieldset className="row sort-decisions">
				<legend className="hidden-visually">{say('sort.yourDecision')}</legend>
				{WORDS.map(({ word, name, key }) => (
					<Button key={word} look={said.sorting.suggestion === word ? 'main' : 'plain'} onPress={() => decide(word)}>
						{say(name)} <kbd>{key}</kbd>
					</Button>
				))}
			</fieldset>
			<div className="row sort-beside">
				<TakeBack sorting={sorting} />
				<Button look="bare" onPress={skip}>
					{say('sort.later')} <kbd>S</kbd>
				</Button>
			</div>
			<div className="sort-why">
				<GarmentJudgement key={garment.id} said={said} garment={garment} report={report} />
			</div>
		</section>
	);
}
