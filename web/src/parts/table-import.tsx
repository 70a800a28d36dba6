import { type ReactNode, useState } from 'react';
import type { Problem as LineProblem, TableForm } from '../../../src/app/tables/read-table.ts';
import { say } from '../../../src/language/speak.ts';
import { useChange } from '../api/change.ts';
import { Button } from './button.tsx';
import { Problem } from './problem.tsx';

/** What every import answers. */
type Answer = TableForm & { readonly problems: readonly LineProblem[]; readonly problemCount: number };

function FormNote({ encoding, separator }: TableForm) {
	return (
		<p className="small">{say('tableImport.takenAs', { encoding, separator: say(`tableImport.${separator}`) })}</p>
	);
}

function LineProblems({ problems, problemCount }: Answer) {
	if (problemCount === 0) return null;
	return (
		<>
			<p>
				{say('tableImport.problems', { count: problemCount })}{' '}
				{problemCount > problems.length ? say('tableImport.first', { shown: problems.length }) : ''}
			</p>
			<ul className="reasons warn">
				{problems.map(({ line, message }) => (
					<li key={`${line} ${message}`}>{say('tableImport.line', { line, message })}</li>
				))}
			</ul>
		</>
	);
}

type TableImportProps<Found extends Answer> = {
	readonly label: string;
	/** Sends the table; with `preview` nothing is stored. */
	readonly send: (table: Blob, preview: boolean) => Promise<Found>;
	/** What was found, in words. */
	readonly children: (found: Found) => ReactNode;
	/** The button's words; null where there is nothing to take. */
	readonly take: (found: Found) => string | null;
};

/** A table (CSV) from elsewhere: shown first, taken only when the user says so. */
export function TableImport<Found extends Answer>({ label, send, children, take }: TableImportProps<Found>) {
	const [table, setTable] = useState<Blob | null>(null);
	const [found, setFound] = useState<Found | null>(null);
	const preview = useChange((csv: Blob) => send(csv, true), setFound);
	const taking = useChange(
		(csv: Blob) => send(csv, false),
		() => setFound(null),
	);
	const action = found ? take(found) : null;
	return (
		<>
			<label className="field">
				<span className="field-label">{label}</span>
				<input
					type="file"
					accept=".csv,.tsv,.txt,text/csv"
					onChange={(event) => {
						const file = event.target.files?.[0];
						setFound(null);
						if (!file) return;
						// The bytes as they are, whatever the system calls such a file: the program finds out the encoding.
						const csv = new Blob([file], { type: 'text/csv' });
						setTable(csv);
						preview.run(csv);
					}}
				/>
			</label>
			{found ? (
				<>
					<div role="status">{children(found)}</div>
					<FormNote {...found} />
					<LineProblems {...found} />
					{action && table ? (
						<Button onPress={() => taking.run(table)} isPending={taking.busy}>
							{action}
						</Button>
					) : null}
				</>
			) : null}
			<Problem of={preview.problem ?? taking.problem} />
		</>
	);
}
