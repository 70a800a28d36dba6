/** One decimal under 10, none above: more digits than a photo can give would mislead. */
export const distanceText = (distance: number): string => (distance < 10 ? distance.toFixed(1) : distance.toFixed(0));
