import type { ReactNode } from 'react';
import { Link } from 'wouter';

/** The head of every page: the way to the start, where the page belongs, and links to the places beside it. */
export const PageHead = ({ label, of, children }: { label: string; of?: ReactNode; children: ReactNode }) => (
	<header className="head">
		<Link href="/" className="wordmark">
			Dyelot
		</Link>
		{of}
		<nav aria-label={label}>{children}</nav>
	</header>
);
