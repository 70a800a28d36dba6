import { say } from '../../../../src/language/speak.ts';
import { type Garment, type GarmentDetails, PLACES, YEAR_PARTS } from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { versionsSeen } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

const choice = <T extends string>(values: readonly T[], labelOf: (value: T) => string) => [
	{ value: '' as const, label: say('bulk.leave') },
	...values.map((value) => ({ value, label: labelOf(value) })),
];

/** What can be told of all chosen garments alike. */
function SharedFields({ onChange }: { onChange: (changes: Partial<GarmentDetails>) => void }) {
	return (
		<div className="fields">
			<SelectField
				label={say('fields.kind')}
				value=""
				options={choice(KIND_NAMES, (kind) => say(`kinds.${kind}`))}
				onChange={(kind) => kind && onChange({ kind })}
			/>
			<SelectField
				label={say('garments.place')}
				value=""
				options={choice(PLACES, (place) => say(`whereabouts.${place}`))}
				onChange={(place) => place && onChange({ place })}
			/>
			<SelectField
				label={say('bulk.serves')}
				value=""
				options={choice([...YEAR_PARTS, 'all'] as const, (part) =>
					part === 'all' ? say('bulk.allYear') : say(`yearParts.${part}`),
				)}
				onChange={(part) => part && onChange({ yearParts: part === 'all' ? [] : [part] })}
			/>
			<SelectField
				label={say('fields.basic')}
				value=""
				options={choice(['yes', 'no'] as const, (word) => say(`bulk.${word}`))}
				onChange={(word) => word && onChange({ basic: word === 'yes' })}
			/>
		</div>
	);
}

/** Changes for every chosen garment at once; two or more photos of one piece become one garment. At least one must be chosen. */
function Changes({ chosen, onNone }: { chosen: readonly Garment[]; onNone: () => void }) {
	const several = () => ({ ids: chosen.map(({ id }) => id), versions: versionsSeen(chosen) });
	const change = useChange((changes: Partial<GarmentDetails>) =>
		call('changeGarments', { body: { ...several(), changes } }),
	);
	const merge = useChange(() => call('mergeGarments', { body: several() }), onNone);
	const remove = useChange(() => call('removeGarments', { body: several() }), onNone);
	return (
		<div className="stack">
			<SharedFields onChange={change.run} />
			<div className="row">
				<Button small onPress={() => change.run({ kindFrom: 'user' })} isPending={change.busy}>
					{say('bulk.confirm')}
				</Button>
				<Button small onPress={() => merge.run(undefined)} isPending={merge.busy} isDisabled={chosen.length < 2}>
					{say('bulk.join')}
				</Button>
				<Button small look="bare" onPress={() => remove.run(undefined)} isPending={remove.busy}>
					{say('bulk.bin')}
				</Button>
			</div>
			<Problem of={change.problem ?? merge.problem ?? remove.problem} />
		</div>
	);
}

/** Choosing among the garments shown, and what can be done with those chosen. */
export function BulkEdit({
	chosen,
	shownCount,
	onAll,
	onNone,
}: {
	chosen: readonly Garment[];
	shownCount: number;
	onAll: () => void;
	onNone: () => void;
}) {
	const { length } = chosen;
	return (
		<div className="bulk">
			<div className="row">
				<span role="status">
					{length === 0
						? say('bulk.none')
						: say('bulk.chosen', { garments: say('counts.garments', { count: length }) })}
				</span>
				<Button small onPress={onAll}>
					{say('bulk.all', { count: shownCount })}
				</Button>
				{length > 0 ? (
					<Button small onPress={onNone}>
						{say('bulk.clear')}
					</Button>
				) : null}
			</div>
			{length > 0 ? <Changes chosen={chosen} onNone={onNone} /> : null}
		</div>
	);
}
