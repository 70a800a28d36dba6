import type { ReactNode } from 'react';

/** A page's name with what it is for, and the one thing to do there at the end of the line. */
export function PageTitle({ name, purpose, children }: { name: string; purpose: string; children?: ReactNode }) {
	return (
		<div className="title">
			<div>
				<h1>{name}</h1>
				<p>{purpose}</p>
			</div>
			{children}
		</div>
	);
}
