import { Link } from 'wouter';
import { say } from '../../../../src/language/speak.ts';

/** On the first page: that clothes can be photographed with a phone, and the way to let it in. */
export function PhoneLine() {
	return (
		<section className="sheet stack" aria-labelledby="start-phone">
			<h2 id="start-phone">{say('door.fromPhone')}</h2>
			<p>
				{say('door.fromPhoneHow')} <Link href="/devices">{say('door.fromPhoneGo')}</Link>
			</p>
		</section>
	);
}
