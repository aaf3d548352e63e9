import { checkMonthDay } from '@/shared/scan-codes/check-month-day';

type CouponFault = {
  readonly code:
    | 'invalid-character'
    | 'coupon-too-short'
    | 'bad-coupon-field'
    | 'bad-month'
    | 'bad-day'
    | 'expires-before-start'
    | 'excess-data';
  readonly at: number;
};

/** Walks a coupon's digits field by field; the first fault is kept, and everything after it is left unread. */
class CouponCursor {
  at = 0;
  fault: CouponFault | undefined;

  constructor(private readonly digits: string) {
    const stray = digits.search(/[^0-9]/);
    if (stray >= 0) this.fault = { code: 'invalid-character', at: stray };
  }

  fail(code: CouponFault['code'], at = this.at): void {
    this.fault ??= { code, at };
  }

  take(length: number): string {
    const text = this.digits.slice(this.at, this.at + length);
    if (text.length < length) this.fail('coupon-too-short');
    this.at += text.length;
    return text;
  }

  /** One digit, which must be among those allowed. */
  digit(allowed: string): string {
    const at = this.at;
    const found = this.take(1);
    if (!this.fault && !allowed.includes(found)) this.fail('bad-coupon-field', at);
    return found;
  }

  /** A length digit, then as many digits as it says plus the base. A 9, where allowed beyond the range, means none. */
  measured(allowed: string, base: number, nineIsNone = false): void {
    const found = this.digit(allowed);
    if (!this.fault) this.take(nineIsNone && found === '9' ? 0 : Number(found) + base);
  }

  date(): string {
    const at = this.at;
    const found = this.take(6);
    if (this.fault) return found;
    const fault = checkMonthDay(2000 + Number(found.slice(0, 2)), found.slice(2), false);
    if (fault) this.fail(fault.code, at + 2 + fault.at);
    return found;
  }

  /** True where the next optional field is the one named. */
  opens(field: string): boolean {
    if (this.fault || this.digits.charAt(this.at) !== field) return false;
    this.at += 1;
    return true;
  }

  end(): CouponFault | undefined {
    if (this.at < this.digits.length) this.fail('excess-data');
    return this.fault;
  }
}

function purchase(cursor: CouponCursor): void {
  cursor.measured('12345', 0);
  cursor.digit('012349');
  cursor.take(3);
}

/**
 * Checks the content of a North American coupon (AI 8110): prefix, offer, save value, first purchase, then the
 * optional fields 1 to 6 and 9 in rising order. Source: GS1 General Specifications 3.9.11, North American Coupon
 * Application Guideline; GS1 Barcode Syntax Dictionary, test `couponcode`.
 */
export function checkCoupon(value: string): CouponFault | undefined {
  const cursor = new CouponCursor(value);
  cursor.measured('0123456', 6);
  cursor.take(6);
  cursor.measured('12345', 0);
  purchase(cursor);
  if (cursor.opens('1')) {
    cursor.digit('0123');
    purchase(cursor);
    cursor.measured('01234569', 6, true);
  }
  if (cursor.opens('2')) {
    purchase(cursor);
    cursor.measured('01234569', 6, true);
  }
  const expiry = cursor.opens('3') ? cursor.date() : undefined;
  if (cursor.opens('4')) {
    const at = cursor.at;
    if (cursor.date() > (expiry ?? '999999')) cursor.fail('expires-before-start', at);
  }
  if (cursor.opens('5')) cursor.measured('0123456789', 6);
  if (cursor.opens('6')) cursor.measured('1234567', 6);
  if (cursor.opens('9')) {
    cursor.digit('01256');
    cursor.digit('012');
    cursor.take(1);
    cursor.digit('01');
  }
  return cursor.end();
}

/**
 * Checks the content of a positive-offer coupon (AI 8112): format, funder, offer, serial number, nothing more.
 * Source: as above, test `couponposoffer`. `checkPositiveOfferCoupon('001234561234560123456')` finds nothing.
 */
export function checkPositiveOfferCoupon(value: string): CouponFault | undefined {
  const cursor = new CouponCursor(value);
  cursor.digit('01');
  cursor.measured('0123456', 6);
  cursor.take(6);
  cursor.measured('0123456789', 6);
  return cursor.end();
}
