import { useState } from 'react';
import { useChange } from '../../api/change.ts';
import { request } from '../../api/request.ts';
import { Button } from '../../parts/button.tsx';
import { countText } from '../../parts/colour-text.ts';
import { Problem } from '../../parts/problem.tsx';

/** What the program found in a table of garments. */
type Found = {
	readonly garments: readonly { readonly name: string }[];
	readonly problems: readonly { readonly line: number; readonly message: string }[];
};

/** Garments from a table (CSV): shown first, taken only when the user says so. */
export function ImportTable() {
	const [text, setText] = useState('');
	const [found, setFound] = useState<Found | null>(null);
	const preview = useChange(
		(csv: string) => request<Found>('POST', '/api/garments/import?preview=true', csv),
		setFound,
	);
	const take = useChange(
		() => request('POST', '/api/garments/import', text),
		() => setFound(null),
	);
	return (
		<details>
			<summary>Bring garments in from a table, or take them along</summary>
			<div className="stack">
				<p>
					<a href="/api/garments.csv" download>
						Take all garments along as a table (CSV)
					</a>
				</p>
				<label className="field">
					<span className="field-label">A table of garments (CSV)</span>
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
						<p role="status">
							{countText(found.garments.length, 'garment')} found:{' '}
							{found.garments
								.slice(0, 8)
								.map(({ name }) => name)
								.join(', ')}
							{found.garments.length > 8 ? ' …' : ''}
						</p>
						{found.problems.length > 0 ? (
							<ul className="reasons warn">
								{found.problems.map(({ line, message }) => (
									<li key={line}>
										Line {line}: {message}
									</li>
								))}
							</ul>
						) : null}
						<Button onPress={() => take.run(undefined)} isPending={take.busy} isDisabled={found.garments.length === 0}>
							Take {countText(found.garments.length, 'garment')} in
						</Button>
					</>
				) : null}
				<Problem of={preview.problem ?? take.problem} />
			</div>
		</details>
	);
}
