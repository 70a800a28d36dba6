import type { ReactNode } from 'react';

/** Lets a table that is wider than the screen scroll by itself, by touch and by the arrow keys; `label` says what it shows. */
export const TableScroll = ({ label, children }: { label: string; children: ReactNode }) => (
	// biome-ignore lint/a11y/noNoninteractiveTabindex: who uses the keyboard must be able to scroll it (WCAG 2.1.1).
	<section className="table-scroll" tabIndex={0} aria-label={label}>
		{children}
	</section>
);
