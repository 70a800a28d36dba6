import type { ReactNode } from 'react';
import { say } from '../../../src/language/speak.ts';
import { TableScroll } from './table-scroll.tsx';

/** A table under these headings, whose last column holds what can be done with each row. */
export const ActingTable = ({ headings, children }: { headings: readonly string[]; children: ReactNode }) => (
	<TableScroll label={headings[0] ?? ''}>
		<table>
			<thead>
				<tr>
					{headings.map((heading) => (
						<th key={heading} scope="col">
							{heading}
						</th>
					))}
					<th scope="col">
						<span className="hidden-visually">{say('seasonsPage.actions')}</span>
					</th>
				</tr>
			</thead>
			<tbody>{children}</tbody>
		</table>
	</TableScroll>
);
