import type { ReactNode } from 'react';

/** What stands where nothing is yet: what the place is for, and what to do next. */
export function Empty({ title, children }: { title: string; children: ReactNode }) {
	return (
		<div className="empty">
			<h2>{title}</h2>
			{children}
		</div>
	);
}
