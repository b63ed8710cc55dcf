/** Books that ship, by the name an address gives them: in English each says itself what a list says of it. */
export const books: Readonly<Record<string, { readonly title: string; readonly about: string }>> = {}
