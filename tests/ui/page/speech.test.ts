import { describe, expect, it } from 'vitest';
import { ownVoice, wordsOf } from '../../../src/lib/ui/page/speech';

const voice = (lang: string, localService: boolean) => ({ lang, localService });

describe('reading aloud', () => {
  it('never uses a voice that would send the words elsewhere', () => {
    expect(ownVoice([voice('en-US', false)], 'en-US')).toBeNull();
  });

  it('prefers the family’s kind of English, and takes another of the device’s own', () => {
    const voices = [voice('fr-FR', true), voice('en-US', true), voice('en-GB', true)];
    expect(ownVoice(voices, 'en-GB')?.lang).toBe('en-GB');
    expect(ownVoice(voices, 'de-DE')?.lang).toBe('en-US');
  });

  it('cuts a sentence into words that know where they begin', () => {
    expect(wordsOf('It grew 3 cm.')).toEqual([
      { text: 'It', begins: 0 },
      { text: 'grew', begins: 3 },
      { text: '3', begins: 8 },
      { text: 'cm.', begins: 10 },
    ]);
  });
});
