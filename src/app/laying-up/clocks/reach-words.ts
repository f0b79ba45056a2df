import type { MayNotify } from '#app/platform/notify.ts';
import type { SoundState } from '#app/platform/sound.ts';
import type { Awake } from '#app/platform/wake-lock.ts';

/** What an alarm cannot do on this phone now, and what to do about it. */
export interface Lack {
  what: string;
  todo: string;
}

export interface Means {
  /** Chosen in the settings. */
  sound: boolean;
  speech: boolean;
  soundState: SoundState;
  awake: Awake;
  mayNotify: MayNotify;
  canVibrate: boolean;
  canSpeak: boolean;
  /** A clock runs, so that the screen ought to be kept on by now. */
  running: boolean;
}

function ofSound({ sound, soundState }: Means): Lack[] {
  if (!sound) return [{ what: 'Sound is off in the settings.', todo: 'Watch for the flash, or turn it on.' }];
  if (soundState === 'unsupported')
    return [{ what: 'This browser makes no sound.', todo: 'Watch for the flash.' }];
  if (soundState === 'locked')
    return [{ what: 'Silent until the screen is touched.', todo: 'Touch it once.' }];
  return [];
}

function ofScreen({ awake, running }: Means): Lack[] {
  if (awake === 'unsupported' || awake === 'refused')
    return [
      { what: 'This phone lets its screen go dark.', todo: 'Set it not to sleep, and put it on charge.' },
    ];
  if (running && awake === 'off')
    return [{ what: 'The screen may go dark.', todo: 'Touch it once, and leave this page in front.' }];
  return [];
}

function ofNotes({ mayNotify }: Means): Lack[] {
  if (mayNotify === 'granted') return [];
  const todo = {
    default: 'Allow notifications, or keep it in front.',
    denied: 'Allow notifications of this app in the settings of the phone, or keep it in front.',
    unsupported: 'Keep it in front. On an iPhone put it on the home screen first.',
  }[mayNotify];
  return [{ what: 'With another app in front no alarm shows.', todo }];
}

function ofVoiceAndBuzz({ canVibrate, speech, canSpeak }: Means): Lack[] {
  return [
    ...(canVibrate ? [] : [{ what: 'This phone does not buzz for a page.', todo: 'Turn the volume up.' }]),
    ...(speech && !canSpeak
      ? [
          {
            what: 'No English voice is on this phone, so nothing is said aloud.',
            todo: 'Add one in its settings under text to speech.',
          },
        ]
      : []),
  ];
}

/** What no page can find out: said even when all seems well. */
const whenMuted: Lack = {
  what: 'No page can tell whether the phone is muted, or plays to headphones or a speaker elsewhere.',
  todo: 'Media volume up, silent switch off, Bluetooth off; then test the alarm.',
};

const whenClosed: Lack = {
  what: 'With the app closed nothing rings: no phone lets a page do that.',
  todo: 'Keep it open and on charge while a clock runs.',
};

/** Everything that keeps an alarm from reaching the builder, what can be mended first. */
export const lacksOf = (means: Means): Lack[] => [
  ...ofSound(means),
  ...ofScreen(means),
  ...ofNotes(means),
  ...ofVoiceAndBuzz(means),
  ...(means.sound && means.soundState !== 'unsupported' ? [whenMuted] : []),
  whenClosed,
];

/** What has to be said while a clock runs: a page that is read aloud or buzzes is heard all the same. */
export const urgentLacks = (means: Means): Lack[] => [...ofSound(means), ...ofScreen(means)];
