"""A rental quote worked apart in decimals: reads worked_quote_cells.csv, writes the expected figures.

Run by hand:  python3 worked_quote.py > worked_quote_expected.csv
The rules are those of rental houses (common practice), written here a second time and in another
way than in the program: charged days are counted from a calendar, amounts from whole cents.
"""
import csv
import datetime
import os
import sys
from collections import OrderedDict, defaultdict
from decimal import ROUND_HALF_UP, Decimal as D

HERE = os.path.dirname(os.path.abspath(__file__))
CENT = D("0.01")


def cents(x):
    return x.quantize(CENT, ROUND_HALF_UP)


def day(text):
    return datetime.date.fromisoformat(text)


def read():
    tables = defaultdict(lambda: defaultdict(dict))
    with open(os.path.join(HERE, "worked_quote_cells.csv"), encoding="utf-8") as f:
        for r in csv.DictReader(f):
            tables[r["table"]][int(r["row"])][r["key"]] = r["cell"]
    return tables


T = read()
house, order = T["house"][1], T["order"][1]
stock = {s["item"]: s for s in T["stock"].values()}


def calendar_days(out, back):
    return (back - out).days + 1


def capped_days(out, back):
    """Three of every seven days from the day out on."""
    cap, n = D(house["daysPerWeek"]), calendar_days(out, back)
    days = [min(D(7), D(n - first)) for first in range(0, n, 7)]
    return max(D(house["minDays"]), sum(min(d, cap) for d in days))


def by_week(item, out, back):
    """Whole weeks, and a rest by the day, at most its week."""
    n = calendar_days(out, back)
    prices = [D(item["weekRate"])] + [D(item["secondWeekRate"])] * (n // 7 + 1)
    total = sum(prices[: n // 7], D(0))
    return total + min(prices[n // 7], D(item["rate"]) * (n % 7))


def price_of_one(item, out, back, agreed=True):
    kind = item.get("type", "hired")
    if kind != "hired":
        return None, D(item["rate"])
    if "weekRate" in item:
        return D(calendar_days(out, back)), by_week(item, out, back)
    days = capped_days(out, back)
    if agreed and "agreedDays" in item:
        days = D(item["agreedDays"])
    return days, days * D(item.get("rate", stock[item["item"]]["dayRate"]))


out_rows = []


def expect(table, row, key, value):
    out_rows.append((table, row, key, value))


lines = []
for number, item in sorted(T["items"].items()):
    o, b = day(item.get("out", order["out"])), day(item.get("back", order["back"]))
    days, one = price_of_one(item, o, b)
    amount = cents(one * D(item["qty"]) * (1 - D(item.get("discount", "0"))))
    rate = D(item.get("tax", order["tax"]))
    lines.append(dict(n=number, item=item, out=o, back=b, amount=amount, rate=rate, days=days))
    expect("items", number, "amount", amount)
    if days is not None:
        expect("items", number, "daysCharged", days)

hired = [l for l in lines if l["item"].get("type", "hired") == "hired"]
others = [l for l in lines if l not in hired]
discount_share, waiver_share = D(order["discount"]), D(order["waiver"])

# sections of the page, in the order in which they come
sections = OrderedDict()
for l in hired:
    sections.setdefault(l["item"]["section"], []).append(l)
page = []
for name, rows in sections.items():
    page.append(("section", None))
    page += [("item", l["amount"]) for l in rows]
    page.append(("subtotal", sum(l["amount"] for l in rows)))
hire = sum(l["amount"] for l in hired)
discount = cents(hire * discount_share)
page += [("hire", hire), ("discount", -discount)]
waiver = cents((hire - discount) * waiver_share)
page.append(("damage waiver, not insurance", waiver))
for kind in ("sold", "service"):
    rows = [l["amount"] for l in others if l["item"]["type"] == kind]
    page += [("section", None)] * bool(rows) + [(kind, amount) for amount in rows]

# the discount by rate, in whole cents, the largest remainder first
by_rate = defaultdict(D)
for l in hired:
    by_rate[l["rate"]] += l["amount"]
exact = {r: v * discount_share * 100 * discount / (hire * discount_share) for r, v in by_rate.items()}
whole = {r: int(v) for r, v in exact.items()}
left = int(discount * 100) - sum(whole.values())
for r in sorted(exact, key=lambda r: (-(exact[r] - whole[r]), r))[:left]:
    whole[r] += 1
bases = defaultdict(D)
for l in lines:
    bases[l["rate"]] += l["amount"]
for r, c in whole.items():
    bases[r] -= D(c) / 100
bases[D(house["waiverTax"])] += waiver
net = sum(bases.values())
page.append(("net", net))
tax = D(0)
for i, r in enumerate(sorted(bases), 1):
    t = cents(bases[r] * r)
    tax += t
    page += [("net by tax rate", bases[r]), ("tax", t)]
    expect("taxes", i, "rate", r)
    expect("taxes", i, "discount", -D(whole.get(r, 0)) / 100)
    expect("taxes", i, "base", bases[r])
    expect("taxes", i, "tax", t)
total = net + tax
down = cents(total * D(order["downPayment"]))
page += [
    ("total", total),
    ("deposit", down),
    ("balance", total - down),
    ("security deposit, not part of the total", cents(D(order["security"]))),
]
# a waiver stands where the client's insurance would: no value to insure
assert waiver_share > 0 and "insuredUntil" not in order
for i, (kind, amount) in enumerate(page, 1):
    expect("document", i, "kind", kind)
    if amount is not None:
        expect("document", i, "amount", amount)

# sub-hire: the days of the other house; the client's net after both discounts
for l in hired:
    if "subFrom" in l["item"]:
        cost = cents(D(l["item"]["subRate"]) * D(l["item"]["subDays"]) * D(l["item"]["qty"]))
        expect("items", l["n"], "subCost", cost)
        expect("items", l["n"], "margin", cents(l["amount"] * (1 - discount_share)) - cost)

# late: the rule to the day of return, less the rule to the day due, both discounts
for number, r in sorted(T["returns"].items()):
    l = next(l for l in lines if l["n"] == int(r["line"]))
    returned = day(r["date"])
    expect("returns", number, "daysLate", max(0, (returned - l["back"]).days))
    if returned > l["back"]:
        _, then = price_of_one(l["item"], l["out"], returned, agreed=False)
        _, due = price_of_one(l["item"], l["out"], l["back"], agreed=False)
        keep = (1 - D(l["item"].get("discount", "0"))) * (1 - discount_share)
        expect("returns", number, "fee", cents((then - due) * D(r["qty"]) * keep))

weight = sum(D(stock[l["item"]["item"]]["weight"]) * D(l["item"]["qty"]) for l in hired)
expect("summary", 1, "weight", weight)
expect("summary", 1, "total", total)

writer = csv.writer(sys.stdout, lineterminator="\n")
writer.writerow(("table", "row", "key", "value"))
writer.writerows(out_rows)
