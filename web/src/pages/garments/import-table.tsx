import type { GarmentImportAnswer } from '../../../../src/app/tables/import-garments.ts';
import { fieldWord } from '../../../../src/language/field-word.ts';
import { say } from '../../../../src/language/speak.ts';
import { call, downloadOf } from '../../api/call.ts';
import { TableImport } from '../../parts/table-import.tsx';

const send = (table: Blob, preview: boolean) => call('importGarments', { query: { preview }, raw: table });

const garmentsText = (count: number): string => say('counts.garments', { count });

function takeWords({ added, changed }: GarmentImportAnswer): string | null {
	if (added > 0 && changed > 0)
		return say('garmentsTable.takeAndChange', { added: garmentsText(added), changed: garmentsText(changed) });
	if (added > 0) return say('garmentsTable.take', { garments: garmentsText(added) });
	return changed > 0 ? say('garmentsTable.change', { garments: garmentsText(changed) }) : null;
}

/** The names there are, with a sign where there are more. */
function namesOf(names: readonly string[], count: number): string {
	const listed = names.join('; ');
	return count > names.length ? say('garmentsTable.andMore', { names: listed }) : listed;
}

function FoundWords({ added, addedNames, likeOthers, changed, changedNames, unchanged }: GarmentImportAnswer) {
	const changes = changedNames.map(({ name, columns }) =>
		say('garmentsTable.changedOne', { name, fields: columns.map(fieldWord).join(', ') }),
	);
	return (
		<>
			<p>
				{added > 0
					? say('garmentsTable.addedNamed', { count: added, names: namesOf(addedNames, added) })
					: say('garmentsTable.added', { count: added })}{' '}
				{likeOthers > 0 ? say('garmentsTable.likeOthers', { count: likeOthers }) : ''}
			</p>
			<p>
				{changed > 0
					? say('garmentsTable.changedNamed', { count: changed, names: namesOf(changes, changed) })
					: say('garmentsTable.changed', { count: changed })}{' '}
				{say('garmentsTable.unchanged', { count: unchanged })}
			</p>
		</>
	);
}

/** Garments from a table (CSV), and all of them as one. */
export function ImportTable() {
	return (
		<details>
			<summary>{say('garmentsTable.title')}</summary>
			<div className="stack">
				<p>
					<a href={downloadOf('exportGarments')} download>
						{say('garmentsTable.takeAlong')}
					</a>{' '}
					{say('garmentsTable.how')}
				</p>
				<TableImport label={say('garmentsTable.label')} send={send} take={takeWords}>
					{FoundWords}
				</TableImport>
			</div>
		</details>
	);
}
