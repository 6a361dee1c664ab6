/** The id that follows from a name: small letters and digits, hyphens between; `otherwise` where nothing is left. */
export function slug(name: string, otherwise: string): string {
  const plain = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
  return plain === '' ? otherwise : plain;
}
