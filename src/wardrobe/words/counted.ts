/** A number with its noun: "1 outfit", "3 outfits", "0 wishes". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
