/** Sentences that the model makes: in English they are said as they come. */
export const modelSays = (text: string): string => text
