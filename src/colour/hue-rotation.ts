const TO_RADIANS = Math.PI / 180;

/** Nodes a quadrant. The cubic between two of them is within 1e-11 of the function (see tests/colour/hue-rotation.test.ts). */
const NODES = 2048;

/** The blue region of the rotation term: centre 275 degrees, width 25, greatest angle 30 (Sharma et al. 2005, equation 16). */
const CENTRE_DEGREES = 275;
const WIDTH_DEGREES = 25;
const TWICE_30_DEGREES = 60 * TO_RADIANS;

/** Value and slope (by step of a node) at every node, from hue 90 to 360 degrees: two numbers a node. */
const TABLE = new Float64Array(2 * (3 * NODES + 1));
for (let node = 0; node <= 3 * NODES; node++) {
	const quadrant = Math.min(2, Math.floor(node / NODES));
	const u = node / NODES - quadrant;
	const degrees = 90 * (quadrant + 1) + Math.atan2(u, 1 - u) / TO_RADIANS;
	const away = (degrees - CENTRE_DEGREES) / WIDTH_DEGREES;
	const angle = TWICE_30_DEGREES * Math.exp(-away * away);
	const slopeByDegree = Math.cos(angle) * angle * ((-2 * away) / WIDTH_DEGREES);
	const degreesByStep = 1 / TO_RADIANS / (u * u + (1 - u) * (1 - u)) / NODES;
	TABLE[2 * node] = Math.sin(angle);
	TABLE[2 * node + 1] = slopeByDegree * degreesByStep;
}

/**
 * sin(2 dTheta) of CIEDE2000's rotation term for the mean hue with cosine `c` and sine `s`: 0.87 at blue (275 degrees), falling to nothing on
 * both sides. Read from a table by the quadrant's diamond angle |y| / (|x| + |y|), which needs no arc tangent and no exponential.
 * From 0 to 90 degrees it is under 1e-23 and taken as 0.
 */
export function hueRotation(c: number, s: number): number {
	let position: number;
	if (s < 0) position = c < 0 ? 1 + s / (s + c) : 2 + c / (c - s);
	else if (c < 0) position = c / (c - s);
	else return 0;
	const at = position * NODES;
	const node = at | 0;
	if (node >= 3 * NODES) return TABLE[6 * NODES]!;
	const t = at - node;
	const v0 = TABLE[2 * node]!;
	const m0 = TABLE[2 * node + 1]!;
	const v1 = TABLE[2 * node + 2]!;
	const m1 = TABLE[2 * node + 3]!;
	const rise = v1 - v0;
	// Cubic Hermite in Horner form.
	return v0 + t * (m0 + t * (3 * rise - 2 * m0 - m1 + t * (m0 + m1 - 2 * rise)));
}
