import { expect } from '@playwright/test';
import { follow, heading, type Phone, phoneOnRealTime } from './hands.ts';
import { clocks } from './job.ts';
import { type KillablePhone, switchOn } from './killable-phone.ts';

async function goTo(phone: Phone, hash: string): Promise<void> {
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** Everything that was entered, line by line. */
async function timeLine(phone: Phone, hash: string): Promise<string[]> {
  await goTo(phone, hash);
  const lines = phone.page.getByRole('region', { name: 'Time line' });
  await expect(lines).toBeVisible();
  return (await lines.getByRole('listitem').allInnerTexts()).map((l) => l.replace(/\s+/g, ' '));
}

export interface Press {
  /** Touches the screen, and returns as soon as the screen says that it is done. */
  act: (phone: Phone) => Promise<unknown>;
  /** What it adds to the time line. */
  leaves: RegExp;
  /** From the bench: the way back to where the work was, and what has to stand there. */
  shows: (phone: Phone) => Promise<unknown>;
}

/** One phone, whose browser is killed again and again on the same profile. */
export class PowerCuts {
  private running: KillablePhone | undefined;

  constructor(
    private readonly address: string,
    private readonly profile: string,
  ) {}

  async on(): Promise<Phone> {
    this.running = await switchOn(this.profile);
    await this.running.page.goto(this.address);
    const phone = phoneOnRealTime(this.running.page);
    await expect(heading(phone)).toBeVisible();
    return phone;
  }

  async cut(): Promise<void> {
    const { running } = this;
    this.running = undefined;
    await running?.kill();
  }

  /** Does something, and cuts the power the moment it is acknowledged; all of it has to be there again. */
  async cutAfter(phone: Phone, record: string, { act, leaves, shows }: Press): Promise<Phone> {
    const here = new URL(phone.page.url()).hash;
    const before = await timeLine(phone, record);
    await goTo(phone, here);
    await act(phone);
    await this.cut();
    const again = await this.on();
    await expect(heading(again)).toHaveText('On the bench');
    const after = await timeLine(again, record);
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.slice(before.length).join('\n')).toMatch(leaves);
    await follow(again, 'Bench');
    await shows(again);
    return again;
  }

  end(): Promise<void> {
    return this.cut().catch(() => {});
  }
}

export interface Started {
  /** s */
  lasts: number;
  /** Before the press and after it was acknowledged, ms */
  from: number;
  to: number;
}

export async function timed(act: () => Promise<unknown>, lasts: number): Promise<Started> {
  const from = Date.now();
  await act();
  return { lasts, from, to: Date.now() };
}

/** What the first clock of the strip has left, s */
export async function leftNow(phone: Phone): Promise<number> {
  const says = (await clocks(phone).locator('.clock-strip-figure').textContent()) ?? '';
  const [, hours = '0', minutes = 'NaN', seconds = 'NaN'] = /(?:(\d+):)?(\d+):(\d\d)\s*left/.exec(says) ?? [];
  return (Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds);
}

/** The first clock of the strip has left what it must have, to the second that a screen may be behind. */
export async function expectLeft(phone: Phone, { lasts, from, to }: Started): Promise<void> {
  const before = Date.now();
  const left = await leftNow(phone);
  expect(left).toBeLessThan(lasts - (before - to) / 1000 + 2);
  expect(left).toBeGreaterThan(lasts - (Date.now() - from) / 1000 - 2);
}
