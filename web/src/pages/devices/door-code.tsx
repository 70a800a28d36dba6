import type { Door } from '../../../../src/app/door.ts';
import { say } from '../../../../src/language/speak.ts';

export type OpenDoor = Extract<Door, { shared: true }>;

const MINUTE_MS = 60_000;

/** 8 digits are easier to type in two groups. */
const grouped = (code: string): string => `${code.slice(0, 4)} ${code.slice(4)}`;

/** One address of this computer: as a picture for a phone's camera, and to type. */
function Address({ address, qr }: OpenDoor['addresses'][number]) {
	return (
		<figure className="door-address">
			<svg
				className="qr"
				viewBox={`0 0 ${qr.sideModules} ${qr.sideModules}`}
				shapeRendering="crispEdges"
				role="img"
				aria-label={say('devicesPage.qr', { address })}
			>
				<rect width={qr.sideModules} height={qr.sideModules} className="qr-ground" />
				<path d={qr.path} className="qr-squares" />
			</svg>
			<figcaption>{address}</figcaption>
		</figure>
	);
}

/** How to let a device in: the address to open there, then the code to type. */
export function DoorCode({ door }: { door: OpenDoor }) {
	const minutes = Math.max(1, Math.ceil(door.validForMs / MINUTE_MS));
	return (
		<ol className="door-steps">
			<li className="stack">
				<p>{say('devicesPage.onPhone')}</p>
				{door.addresses.length === 0 ? (
					<p className="warn">{say('devicesPage.noNetwork')}</p>
				) : (
					<div className="row">
						{door.addresses.map((one) => (
							<Address key={one.address} {...one} />
						))}
					</div>
				)}
			</li>
			<li className="stack">
				<p>{say('devicesPage.thenCode', { count: minutes })}</p>
				<p className="door-code">{grouped(door.code)}</p>
			</li>
		</ol>
	);
}
