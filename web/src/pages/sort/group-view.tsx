import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { Button } from '../../parts/button.tsx';
import { useKeptFocus } from '../../parts/kept-focus.ts';
import { PhotoPick } from '../../parts/photo-pick.tsx';
import { useKeys } from './sort-keys.ts';
import { type SortItem, type SortLean, sortGroups } from './sort-order.ts';
import { TakeBack } from './take-back.tsx';
import type { Sorting } from './use-sorting.ts';

const TITLES = {
	keep: 'sort.keepGroup',
	'rather-keep': 'sort.ratherKeepGroup',
	store: 'sort.storeGroup',
	'let-go': 'sort.letGoGroup',
	'rather-not': 'sort.ratherNotGroup',
	undecided: 'sort.undecidedGroup',
} as const;
const HOW = {
	keep: 'sort.keepHow',
	'rather-keep': 'sort.ratherKeepHow',
	store: 'sort.storeHow',
	'let-go': 'sort.letGoHow',
	'rather-not': 'sort.ratherNotHow',
	undecided: 'sort.undecidedHow',
} as const;
const WORDS = [
	['keep', 'sort.keep', 'sort.keepThese'],
	['store', 'sort.store', 'sort.storeThese'],
	['let-go', 'sort.letGo', 'sort.letGoThese'],
] as const;

/** Garments for which the same is suggested: all ticked where something speaks for it, none where nothing does. */
function Group({ lean, items, sorting }: { lean: SortLean; items: readonly SortItem[]; sorting: Sorting }) {
	/** Ids that stand otherwise than the group began. */
	const [flipped, setFlipped] = useState<ReadonlySet<string>>(new Set());
	const startsTicked = lean === 'keep' || lean === 'store' || lean === 'let-go';
	const isTicked = ({ garment }: SortItem) => flipped.has(garment.id) !== startsTicked;
	const ticked = items.filter(isTicked);
	const tickAll = (on: boolean) =>
		setFlipped(on === startsTicked ? new Set() : new Set(items.map(({ garment }) => garment.id)));
	const flip = (id: string) =>
		setFlipped((old) => {
			const next = new Set(old);
			if (!next.delete(id)) next.add(id);
			return next;
		});
	return (
		<section className="section stack" aria-labelledby={`group-${lean}`}>
			<h2 id={`group-${lean}`} tabIndex={-1} data-focus-next>
				{say(TITLES[lean])} <span className="small quiet">{items.length}</span>
			</h2>
			<p className="quiet">{say(HOW[lean])}</p>
			<div className="group-pieces">
				<ul className="picks">
					{items.map((item) => (
						<li key={item.garment.id}>
							<PhotoPick garment={item.garment} ticked={isTicked(item)} onFlip={() => flip(item.garment.id)}>
								{item.said.sorting.reasons[0]}
							</PhotoPick>
						</li>
					))}
				</ul>
				<fieldset className="row group-decision">
					<legend className="hidden-visually">{say('sort.yourDecision')}</legend>
					{WORDS.map(([word, name, named]) => (
						<Button
							key={word}
							look={word === lean ? 'main' : 'plain'}
							isDisabled={ticked.length === 0}
							onPress={() => sorting.decide(ticked, word)}
						>
							{ticked.length === 0 ? say(name) : say(named, { count: ticked.length })}
						</Button>
					))}
					<Button look="bare" small onPress={() => tickAll(ticked.length < items.length)}>
						{say(ticked.length < items.length ? 'sort.tickAll' : 'sort.tickNone')}
					</Button>
				</fieldset>
			</div>
		</section>
	);
}

/** What is left, in groups by what is suggested: each group is decided at one press, by the user. */
export function GroupView({ left, sorting }: { left: readonly SortItem[]; sorting: Sorting }) {
	const list = useKeptFocus<HTMLDivElement>(left.length);
	useKeys({ u: sorting.takeBack });
	return (
		<div ref={list} className="stack">
			<TakeBack sorting={sorting} />
			{sortGroups(left).map(({ lean, items }) => (
				<Group key={lean} lean={lean} items={items} sorting={sorting} />
			))}
		</div>
	);
}
