import { say } from '../../../../src/language/speak.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import { type Garment, type GarmentDetails, PLACES, YEAR_PARTS } from '../../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../../../src/wardrobe/words/kind.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { versionsSeen } from '../../api/change-thing.ts';
import { Button } from '../../parts/button.tsx';
import { SelectField } from '../../parts/field.tsx';
import { Problem } from '../../parts/problem.tsx';

const choice = <T extends string>(values: readonly T[], labelOf: (value: T) => string = (value) => value) => [
	{ value: '' as const, label: 'leave as it is' },
	...values.map((value) => ({ value, label: labelOf(value) })),
];

/** Changes for every chosen garment at once; two or more photos of one piece become one garment. */
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
	const several = () => ({ ids: chosen.map(({ id }) => id), versions: versionsSeen(chosen) });
	const change = useChange((changes: Partial<GarmentDetails>) =>
		call('changeGarments', { body: { ...several(), changes } }),
	);
	const merge = useChange(() => call('mergeGarments', { body: several() }), onNone);
	const remove = useChange(() => call('removeGarments', { body: several() }), onNone);
	return (
		<div className="bulk">
			<div className="row">
				<span role="status">{chosen.length === 0 ? 'None chosen' : `${counted(chosen.length, 'garment')} chosen`}</span>
				<Button small onPress={onAll}>
					Choose all {shownCount} shown
				</Button>
				{chosen.length > 0 ? (
					<Button small onPress={onNone}>
						Choose none
					</Button>
				) : null}
			</div>
			{chosen.length > 0 ? (
				<div className="stack">
					<div className="fields">
						<SelectField
							label="Kind"
							value=""
							options={choice(KIND_NAMES, (kind) => say(`kinds.${kind}`))}
							onChange={(kind) => kind && change.run({ kind })}
						/>
						<SelectField
							label="Place"
							value=""
							options={choice(PLACES)}
							onChange={(place) => place && change.run({ place })}
						/>
						<SelectField
							label="Serves"
							value=""
							options={choice([...YEAR_PARTS, 'all year'] as const)}
							onChange={(part) => part && change.run({ yearParts: part === 'all year' ? [] : [part] })}
						/>
						<SelectField
							label="Year-round basic"
							value=""
							options={choice(['yes', 'no'] as const)}
							onChange={(word) => word && change.run({ basic: word === 'yes' })}
						/>
					</div>
					<div className="row">
						<Button small onPress={() => change.run({ kindFrom: 'user' })} isPending={change.busy}>
							Confirm their kinds
						</Button>
						<Button small onPress={() => merge.run(undefined)} isPending={merge.busy} isDisabled={chosen.length < 2}>
							They are one piece: join their photos
						</Button>
						<Button small look="bare" onPress={() => remove.run(undefined)} isPending={remove.busy}>
							To the bin
						</Button>
					</div>
					<Problem of={change.problem ?? merge.problem ?? remove.problem} />
				</div>
			) : null}
		</div>
	);
}
