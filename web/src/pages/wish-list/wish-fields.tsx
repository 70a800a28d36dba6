import { say } from '../../../../src/language/speak.ts';
import { KIND_NAMES, type Kind, slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import { USUAL_TOLERANCE, type Wish } from '../../../../src/wardrobe/words/wish.ts';
import { seenFrom } from '../../parts/colour-text.ts';
import { SelectField, TextArea, TextField } from '../../parts/field.tsx';
import { numberOrNull } from '../../parts/number-text.ts';
import { PriceField } from '../../parts/price-field.tsx';
import { YearPartChecks } from '../../parts/year-part-checks.tsx';

type Change = (changes: Partial<Wish>) => void;

/** What may be told of a wish: its limits, and how long it has been wanted. */
function LimitFields({ wish, onChange }: { wish: Wish; onChange: Change }) {
	return (
		<>
			<PriceField
				label={say('wishList.priceLimit')}
				price={wish.priceLimit}
				onCommit={(priceLimit) => onChange({ priceLimit })}
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
				onCommit={(text) => onChange({ tolerance: Math.min(40, Math.max(1, Number(text) || USUAL_TOLERANCE)) })}
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
			<fieldset>
				<legend>{say('wishList.serves')}</legend>
				<span className="row">
					<YearPartChecks chosen={wish.yearParts} onChange={(yearParts) => onChange({ yearParts })} />
				</span>
			</fieldset>
			<TextArea label={say('wishList.notes')} value={wish.notes} onCommit={(notes) => onChange({ notes })} />
		</details>
	);
}
