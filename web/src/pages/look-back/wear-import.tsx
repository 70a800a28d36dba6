import { counted } from '../../../../src/wardrobe/words/counted.ts';
import { call, pathTo } from '../../api/call.ts';
import { TableImport } from '../../parts/table-import.tsx';

const send = (table: Blob, preview: boolean) => call('importWears', { query: { preview }, raw: table });

/** Wears from a table (CSV) kept elsewhere, or from our own export. */
export function WearImport() {
	return (
		<details>
			<summary>Bring wears in from a table, or take them along</summary>
			<div className="stack">
				<p>
					<a href={pathTo('exportWears')} download>
						Take all wears along as a table (CSV)
					</a>
				</p>
				<TableImport
					label="A table (CSV) with the columns day and garment"
					send={send}
					take={({ added }) => (added > 0 ? `Take ${counted(added, 'wear')} in` : null)}
				>
					{({ added, known }) => (
						<p>
							{counted(added, 'new wear')}
							{known > 0 ? `; ${known} noted already` : ''}.
						</p>
					)}
				</TableImport>
			</div>
		</details>
	);
}
