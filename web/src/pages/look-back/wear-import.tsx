import { say } from '../../../../src/language/speak.ts';
import { call, downloadOf } from '../../api/call.ts';
import { TableImport } from '../../parts/table-import.tsx';

const send = (table: Blob, preview: boolean) => call('importWears', { query: { preview }, raw: table });

/** Wears from a table (CSV) kept elsewhere, or from our own export. */
export function WearImport() {
	return (
		<details>
			<summary>{say('lookBackPage.tables')}</summary>
			<div className="stack">
				<p>
					<a href={downloadOf('exportWears')} download>
						{say('lookBackPage.takeAlong')}
					</a>
				</p>
				<TableImport
					label={say('lookBackPage.tableLabel')}
					send={send}
					take={({ added }) => (added > 0 ? say('lookBackPage.takeIn', { count: added }) : null)}
				>
					{({ added, notedBefore }) => (
						<p>
							{notedBefore > 0
								? say('lookBackPage.newAndKnown', { count: added, known: notedBefore })
								: say('lookBackPage.newWears', { count: added })}
						</p>
					)}
				</TableImport>
			</div>
		</details>
	);
}
