import { say } from '../../../../src/language/speak.ts';
import type { WishStanding } from '../../../../src/wardrobe/wishes/wishes.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import { YEAR_PARTS } from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { SEEN_FROM } from '../../parts/colour-text.ts';
import { Check, SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { numberOrNull } from '../../parts/number-text.ts';
import { Problem } from '../../parts/problem.tsx';
import { Swatch } from '../../parts/swatch.tsx';

/** One wish: what is looked for, how long it has been wanted, and where to look. */
export function WishCard({
	wish,
	standing,
	season,
}: {
	wish: Wish;
	standing: WishStanding | undefined;
	season: Season;
}) {
	const change = useChange((changes: Partial<Wish>) => changeThing('changeWish', wish.id, wish, changes));
	const strike = useChange(() => removeThing('removeWish', wish.id, wish));
	const kinds = KIND_NAMES.filter((kind) => slotOfKind(kind) === wish.slot);
	const toggle = (part: (typeof YEAR_PARTS)[number], on: boolean) =>
		change.run({ yearParts: on ? [...wish.yearParts, part] : wish.yearParts.filter((one) => one !== part) });
	return (
		<article className="wish" aria-label={wish.name}>
			<header>
				<h3>{wish.name}</h3>
				{standing ? (
					<span className="number" title="Out of outfits added, coverage and seasons served">
						priority {standing.priority}
					</span>
				) : (
					<span className="italic">{wish.state}</span>
				)}
			</header>
			{wish.target ? (
				<Swatch lab={wish.target} note={say('wishes.orNear')} />
			) : (
				<p className="quiet">Any colour of the palette.</p>
			)}
			{standing ? <p>{standing.sentence}</p> : null}
			{standing && standing.makers.length > 0 ? (
				<p className="small">Makers you trust: {standing.makers.map(({ name }) => name).join(', ')}.</p>
			) : null}
			{standing && standing.newInDays > 0 ? (
				<p className="small quiet">
					<progress
						value={season.waitingDays - standing.newInDays}
						max={season.waitingDays}
						aria-label="Waiting time passed"
					/>
					{counted(standing.newInDays, 'day')} until new is allowed
				</p>
			) : null}
			<details>
				<summary>Change it</summary>
				<div className="fields">
					<TextField label="Name" value={wish.name} onCommit={(name) => change.run({ name })} />
					<SelectField<Kind | ''>
						label="Kind"
						value={wish.kind ?? ''}
						options={[
							{ value: '' as const, label: say('wishes.anyOf', { slot: say(`slots.${wish.slot}`) }) },
							...kinds.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) })),
						]}
						onChange={(kind) => change.run({ kind: kind === '' ? null : kind })}
					/>
					<TextField
						label="Price limit"
						type="number"
						min={0}
						step="any"
						value={wish.priceLimit?.toString() ?? ''}
						onCommit={(text) => change.run({ priceLimit: numberOrNull(text) })}
					/>
					<TextField
						label="Wears expected in a year"
						type="number"
						min={0}
						max={366}
						value={wish.expectedWearsPerYear?.toString() ?? ''}
						onCommit={(text) => change.run({ expectedWearsPerYear: numberOrNull(text) })}
					/>
					<TextField
						label="How far its colour may differ"
						hint={SEEN_FROM}
						type="number"
						min={1}
						max={40}
						step="any"
						value={String(Math.round(wish.tolerance * 10) / 10)}
						onCommit={(text) => change.run({ tolerance: Math.min(40, Math.max(1, Number(text) || 8)) })}
					/>
					<TextField
						label="Wanted since"
						type="date"
						value={wish.wantedSince}
						onCommit={(wantedSince) => wantedSince && change.run({ wantedSince })}
					/>
				</div>
				<fieldset>
					<legend>Serves</legend>
					<span className="row">
						{YEAR_PARTS.map((part) => (
							<Check
								key={part}
								label={part}
								checked={wish.yearParts.includes(part)}
								onChange={(on) => toggle(part, on)}
							/>
						))}
					</span>
				</fieldset>
				<TextArea label="Notes, and where to look" value={wish.notes} onCommit={(notes) => change.run({ notes })} />
			</details>
			<span className="row">
				{wish.state === 'open' ? (
					<>
						<Button small onPress={() => change.run({ state: 'answered' })}>
							Answered
						</Button>
						<Button small onPress={() => change.run({ state: 'dropped' })}>
							No longer wanted
						</Button>
					</>
				) : (
					<Button small onPress={() => change.run({ state: 'open' })}>
						Wish for it again
					</Button>
				)}
				<Button
					small
					look="bare"
					onPress={() => strike.run(undefined)}
					aria-label={`Put the wish ${wish.name} in the bin`}
				>
					To the bin
				</Button>
			</span>
			<Problem of={change.problem ?? strike.problem} />
		</article>
	);
}
