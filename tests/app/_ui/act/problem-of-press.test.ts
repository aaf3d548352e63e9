import { describe, expect, it, vi } from 'vitest';
import { mayBeWritten, problemOfPress } from '@/app/_ui/act/problem-of-press';

const problem = (code: string) => ({ code, what: '', kept: '', todo: '' });

describe('a press without an answer', () => {
  it('is lost network where the request failed or the device is offline', () => {
    expect(problemOfPress(new TypeError('Failed to fetch'), true).code).toBe('no-network');
    expect(problemOfPress(new Error('An unexpected response was received.'), false).code).toBe('no-network');
  });

  it('is not blamed on the network where the server answered with an error, and has a reference', () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const said = problemOfPress(Object.assign(new Error('Server error'), { digest: '1234567890' }), true);
    expect(said.code).toBe('no-proper-answer');
    expect(`${said.what} ${said.todo}`).not.toMatch(/Wi-Fi|reached/);
    expect(said.todo).toContain('the reference is 1234567890.');
    const own = /the reference is ([0-9a-f]{8})\.$/.exec(problemOfPress(new Error('413'), true).todo)?.[1];
    expect(log.mock.calls.map(([first]) => first)).toContain(`[${own}]`);
    log.mockRestore();
  });

  it('keeps its key where it may be written all the same, and only there', () => {
    const open = ['no-network', 'no-proper-answer', 'key-used-for-something-else', 'unknown'];
    expect(open.every((code) => mayBeWritten(problem(code)))).toBe(true);
    expect(['form', 'not-found', 'verdict-changed'].some((code) => mayBeWritten(problem(code)))).toBe(false);
  });
});
