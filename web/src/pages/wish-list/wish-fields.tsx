import { say } from '../../../../src/language/speak.ts';
import { YEAR_PARTS } from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import type { Wish } from '../../../../src/wardrobe/words/wish.ts';
import { seenFrom } from '../../parts/colour-text.ts';
import { Check, SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { numberOrNull } from '../../parts/number-text.ts';

type Change = (changes: Partial<Wish>) => void;

/** The parts of the year that a wish serves. */
function ServesFields({ wish, onChange }: { wish: Wish; onChange: Change }) {
	const toggle = (part: (typeof YEAR_PARTS)[number], on: boolean) =>
		onChange({ yearParts: on ? [...wish.yearParts, part] : wish.yearParts.filter((one) => one !== part) });
	return (
		<fieldset>
			<legend>{say('wishList.serves')}</legend>
			<span className="row">
				{YEAR_PARTS.map((part) => (
					<Check
						key={part}
						label={say(`yearParts.${part}`)}
						checked={wish.yearParts.includes(part)}
						onChange={(on) => toggle(part, on)}
					/>
				))}
			</span>
		</fieldset>
	);
}

/** What may be told of a wish: its limits, and how long it has been wanted. */
function LimitFields({ wish, onChange }: { wish: Wish; onChange: Change }) {
	return (
		<>
			<TextField
				label={say('wishList.priceLimit')}
				type="number"
				min={0}
				step="any"
				value={wish.priceLimit?.toString() ?? ''}
				onCommit={(text) => onChange({ priceLimit: numberOrNull(text) })}
			/>
			<TextField
				label={say('wishList.expectedWears')}
				type="number"
				min={0}
				max={366}
				value={wish.expectedWearsPerYear?.toString() ?? ''}
				onCommit={(text) => onChange({ expectedWearsPerYear: numberOrNull(text) })}
			/>
			<TextField
				label={say('wishList.tolerance')}
				hint={seenFrom()}
				type="number"
				min={1}
				max={40}
				step="any"
				value={String(Math.round(wish.tolerance * 10) / 10)}
				onCommit={(text) => onChange({ tolerance: Math.min(40, Math.max(1, Number(text) || 8)) })}
			/>
			<TextField
				label={say('wishList.wantedSince')}
				type="date"
				value={wish.wantedSince}
				onCommit={(wantedSince) => wantedSince && onChange({ wantedSince })}
			/>
		</>
	);
}

/** Everything that may be told of a wish, folded away until it is asked for. */
export function WishFields({ wish, onChange }: { wish: Wish; onChange: Change }) {
	const kinds = KIND_NAMES.filter((kind) => slotOfKind(kind) === wish.slot);
	return (
		<details>
			<summary>{say('wishList.change')}</summary>
			<div className="fields">
				<TextField label={say('fields.name')} value={wish.name} onCommit={(name) => onChange({ name })} />
				<SelectField<Kind | ''>
					label={say('fields.kind')}
					value={wish.kind ?? ''}
					options={[
						{ value: '' as const, label: say('wishes.anyOf', { slot: say(`slots.${wish.slot}`) }) },
						...kinds.map((kind) => ({ value: kind, label: say(`kinds.${kind}`) })),
					]}
					onChange={(kind) => onChange({ kind: kind === '' ? null : kind })}
				/>
				<LimitFields wish={wish} onChange={onChange} />
			</div>
			<ServesFields wish={wish} onChange={onChange} />
			<TextArea label={say('wishList.notes')} value={wish.notes} onCommit={(notes) => onChange({ notes })} />
		</details>
	);
}
