import { useState } from 'react';
import type { WearImport as Found } from '../../../../src/wardrobe/season/wear-rows.ts';
import { useChange } from '../../api/change.ts';
import { request } from '../../api/request.ts';
import { Button } from '../../parts/button.tsx';
import { countText } from '../../parts/colour-text.ts';
import { Problem } from '../../parts/problem.tsx';

/** Wears from a table (CSV) kept elsewhere: shown first, taken only when the user says so. */
export function WearImport() {
	const [text, setText] = useState('');
	const [found, setFound] = useState<Found | null>(null);
	const preview = useChange((csv: string) => request<Found>('POST', '/api/wears/csv?preview=true', csv), setFound);
	const take = useChange(
		() => request('POST', '/api/wears/csv', text),
		() => setFound(null),
	);
	return (
		<details>
			<summary>Bring wears in from a table</summary>
			<div className="stack">
				<label className="field">
					<span className="field-label">A table (CSV) with the columns day and garment</span>
					<input
						type="file"
						accept=".csv,text/csv"
						onChange={async (event) => {
							const csv = (await event.target.files?.[0]?.text()) ?? '';
							setText(csv);
							if (csv) preview.run(csv);
						}}
					/>
				</label>
				{found ? (
					<>
						<p role="status">{countText(found.wears.length, 'wear')} found.</p>
						<ul className="reasons warn">
							{found.problems.map(({ line, message }) => (
								<li key={`${line} ${message}`}>
									Line {line}: {message}
								</li>
							))}
						</ul>
						<Button onPress={() => take.run(undefined)} isPending={take.busy} isDisabled={found.wears.length === 0}>
							Take {countText(found.wears.length, 'wear')} in
						</Button>
					</>
				) : null}
				<Problem of={preview.problem ?? take.problem} />
			</div>
		</details>
	);
}
