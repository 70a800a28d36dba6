import type { GarmentImportAnswer } from '../../../../src/app/tables/import-garments.ts';
import { counted } from '../../../../src/wardrobe/words/counted.ts';
import { addressOfCall, call } from '../../api/call.ts';
import { TableImport } from '../../parts/table-import.tsx';

const send = (table: Blob, preview: boolean) => call('importGarments', { query: { preview }, raw: table });

function takeWords({ added, changed }: GarmentImportAnswer): string | null {
	if (added + changed === 0) return null;
	const parts = [
		...(added > 0 ? [`Take ${counted(added, 'garment')} in`] : []),
		...(changed > 0 ? [`${added > 0 ? 'change' : 'Change'} ${counted(changed, 'garment')}`] : []),
	];
	return parts.join(' and ');
}

function FoundWords(found: GarmentImportAnswer) {
	const { added, addedNames, likeOthers, changed, changedNames, unchanged } = found;
	return (
		<>
			<p>
				{added} new{added > 0 ? `: ${addedNames.join(', ')}${added > addedNames.length ? ' …' : ''}` : ''}.
				{likeOthers > 0
					? ` ${counted(likeOthers, 'of them has', 'of them have')} the name and kind of a garment you have: look whether it is the same one.`
					: ''}
			</p>
			<p>
				{changed} to change
				{changed > 0
					? `: ${changedNames.map(({ name, columns }) => `${name} (${columns.join(', ')})`).join(', ')}${changed > changedNames.length ? ' …' : ''}`
					: ''}
				. {unchanged} as they are.
			</p>
		</>
	);
}

/** Garments from a table (CSV), and all of them as one. */
export function ImportTable() {
	return (
		<details>
			<summary>Bring garments in from a table, or take them along</summary>
			<div className="stack">
				<p>
					<a href={addressOfCall('exportGarments')} download>
						Take all garments along as a table (CSV)
					</a>{' '}
					Change it in a spreadsheet and bring it back here: what you changed is changed, nothing is doubled.
				</p>
				<TableImport label="A table of garments (CSV) with the columns name and kind" send={send} take={takeWords}>
					{FoundWords}
				</TableImport>
			</div>
		</details>
	);
}
