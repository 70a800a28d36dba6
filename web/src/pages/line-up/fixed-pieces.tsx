import { say } from '../../../../src/language/speak.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import type { LineUpChoice } from '../../../../src/wardrobe/words/season.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField } from '../../parts/field.tsx';
import { type SetChanges, setMust, setNever } from './set-changes.ts';

/** Pieces fixed one way, each to be freed, and a field that fixes another. */
function Fixed({
	title,
	add,
	ids,
	choosable,
	nameOf,
	onFix,
}: {
	title: string;
	add: string;
	ids: readonly string[];
	choosable: readonly Garment[];
	nameOf: (id: string) => string;
	onFix: (id: string, fixed: boolean) => void;
}) {
	return (
		<div className="stack">
			<h3>{title}</h3>
			{ids.length > 0 ? (
				<ul className="row">
					{ids.map((id) => (
						<li key={id}>
							<Button small onPress={() => onFix(id, false)} aria-label={say('set.drop', { name: nameOf(id) })}>
								{nameOf(id)} <span aria-hidden="true">×</span>
							</Button>
						</li>
					))}
				</ul>
			) : null}
			<SelectField
				label={add}
				value=""
				options={[
					{ value: '', label: say('set.choose') },
					...choosable.filter(({ id }) => !ids.includes(id)).map(({ id, name }) => ({ value: id, label: name })),
				]}
				onChange={(id) => id && onFix(id, true)}
			/>
		</div>
	);
}

/** What must be in the set whatever else is chosen, and what never is. */
export function FixedPieces({
	choice,
	garments,
	nameOf,
	onChange,
}: {
	choice: LineUpChoice;
	garments: readonly Garment[];
	nameOf: (id: string) => string;
	onChange: (changes: SetChanges) => void;
}) {
	const inside = new Set(choice.garmentIds);
	const usable = garments
		.filter(({ id, place }) => place === 'rail' || inside.has(id))
		.toSorted((a, b) => a.name.localeCompare(b.name));
	return (
		<div className="fields">
			<Fixed
				title={say('set.mustHaves')}
				add={say('set.addMust')}
				ids={choice.mustKeep}
				choosable={usable}
				nameOf={nameOf}
				onFix={(id, must) => onChange(setMust(choice, id, must))}
			/>
			<Fixed
				title={say('set.never')}
				add={say('set.addNever')}
				ids={choice.neverUse}
				choosable={usable}
				nameOf={nameOf}
				onFix={(id, never) => onChange(setNever(choice, id, never))}
			/>
		</div>
	);
}
