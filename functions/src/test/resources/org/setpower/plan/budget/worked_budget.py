"""A cost report worked apart in decimals: reads worked_budget_cells.csv, writes the expected figures.

Run by hand:  python3 worked_budget.py > worked_budget_expected.csv
The columns are those of a production's cost report (common practice), written here a second time:
overtime is added up in quarters of an hour, weeks are found by their ISO number.
"""
import csv
import datetime
import os
import sys
from collections import defaultdict
from decimal import ROUND_HALF_UP, Decimal as D

HERE = os.path.dirname(os.path.abspath(__file__))


def cents(x):
    return x.quantize(D("0.01"), ROUND_HALF_UP)


def read():
    tables = defaultdict(lambda: defaultdict(dict))
    with open(os.path.join(HERE, "worked_budget_cells.csv"), encoding="utf-8") as f:
        for r in csv.DictReader(f):
            tables[r["table"]][int(r["row"])][r["key"]] = r["cell"]
    return tables


T = read()
P = T["project"][1]
counts = {c["count"]: c for c in T["counts"].values()}
rates = {e["currency"]: D(e["rate"]) for e in T["exchange"].values()}
tiers = sorted((D(t["after"]), D(t["factor"])) for t in T["tiers"].values())


def paid_hours(worked, least):
    """Quarter by quarter: each with the factor of the last step that it is beyond."""
    quarters = 0
    while D(quarters) / 4 < max(worked, least):
        quarters += 1
    paid = D(0)
    for q in range(quarters):
        factor = D(1)
        for after, f in tiers:
            if D(q) / 4 >= after:
                factor = f
        paid += factor / 4
    return paid


def num(line, key, otherwise="0"):
    return D(line.get(key, otherwise))


def yes(line, key):
    return line.get(key) == "yes"


def plan(line, dearer=D(0), more=D(0)):
    if yes(line, "struck"):
        return D(0), D(0), D(0)
    count = counts.get(line.get("count"))
    qty = num(line, "qty", "1") * (D(count["value"]) if count else 1)
    in_all = count is not None and yes(count, "inAll")
    times = max(num(line, "times", "1"), num(line, "minTimes")) + (D(0) if in_all else more)
    each = num(line, "price") * (1 + dearer)
    crew = line["type"] == "crew"
    if crew and "hours" in line:
        covered = D(line["coveredHours"])
        each = each * paid_hours(D(line["hours"]), max(covered, D(P["minimumCall"]))) / covered
    pay = cents(each * qty * times * (1 - num(line, "discount")))
    pay = cents(pay * rates.get(line.get("currency"), D(1)))
    if not crew:
        return pay, D(0), D(0)
    fringe = cents(min(pay, D(P["ceiling"]) * qty) * num(line, "fringe", P["fringe"]))
    away = num(line, "daysAway")
    per_diem = cents((away + more) * D(P["perDiem"]) * qty) if "daysAway" in line else D(0)
    return pay, fringe, per_diem


def taxes(line, net):
    net = cents(net)
    usual = "0" if line["type"] == "crew" else P["tax"]
    tax = cents(net * num(line, "tax", usual))
    return net, tax, cents(tax * num(line, "recoverable", P["recoverable"]))


def report(line, amount):
    net, tax, back = taxes(line, amount)
    return net + tax - back


rows = []
finals = {}
weeks = defaultdict(lambda: defaultdict(D))


def monday(date):
    year, week, _ = date.isocalendar()
    return datetime.date.fromisocalendar(year, week, 1)


def move(date, what, amount):
    if amount:
        weeks[monday(date)][what] += amount


def date(key):
    return datetime.date.fromisoformat(P[key])


totals = defaultdict(lambda: defaultdict(D))
COLUMNS = ("budget", "ordered", "costToDate", "toComplete", "finalCost", "variance")
for n, line in sorted(T["lines"].items()):
    pay, fringe, per_diem = plan(line)
    planned = pay + fringe + per_diem
    ordered, invoiced = num(line, "ordered"), num(line, "invoiced")
    done = yes(line, "complete") or yes(line, "struck")
    to_date = invoiced if yes(line, "complete") or yes(line, "poClosed") else max(ordered, invoiced)
    if "estimate" in line:
        to_come = D(line["estimate"])
    else:
        to_come = planned - to_date
        # a reduction is still to come with its minus
        minus = line["type"] == "reduction" and planned < 0
        to_come = D(0) if done or (to_come > 0) == minus else to_come
    final = to_date + to_come
    finals[id(line)] = final
    v = dict(
        budget=report(line, num(line, "budget") + num(line, "changes")),
        ordered=report(line, ordered),
        costToDate=report(line, to_date),
        finalCost=report(line, final),
    )
    v["toComplete"] = v["finalCost"] - v["costToDate"]
    v["variance"] = v["budget"] - v["finalCost"]
    rows += [
        ("lines", n, "pay", pay),
        ("lines", n, "fringes", fringe),
        ("lines", n, "perDiems", per_diem),
        ("lines", n, "plannedTyped", planned),
        ("lines", n, "planned", report(line, planned)),
        ("lines", n, "budgetNow", v["budget"]),
        ("lines", n, "orderedNow", v["ordered"]),
        ("lines", n, "costToDate", v["costToDate"]),
        ("lines", n, "toComplete", v["toComplete"]),
        ("lines", n, "finalCost", v["finalCost"]),
        ("lines", n, "variance", v["variance"]),
    ]
    quiet = yes(line, "struck") and not any(v.values())
    for c in COLUMNS if not quiet else ():
        for group in (("account", line.get("account", "other")), ("department", line.get("department", "other"))):
            totals[group][c] += v[c]
        totals["all"][c] += v[c]
    net, tax, back = taxes(line, final)
    rows += [("lines", n, "gross", net + tax), ("lines", n, "reclaimed", back)]
    # nobody pays wages before they are earned: crew is paid each week unless Due says otherwise
    due = line.get("due", "each week" if line["type"] == "crew" else "on delivery")
    if due == "each week":
        first, last = monday(date("delivered")), monday(date("back"))
        parts = (last - first).days // 7 + 1
        for part in range(parts):
            for what, whole in (("payments", net + tax), ("reclaim", back)):
                coins = int(whole * 100)
                share = coins // parts + (1 if part < coins % parts else 0)
                day = first + datetime.timedelta(days=7 * part)
                if what == "reclaim":
                    day += datetime.timedelta(days=int(P["reclaimAfter"]))
                move(day, what, D(share) / 100)
    else:
        day = {
            "with order": date("ordered"),
            "on delivery": date("delivered"),
            "on return": date("back"),
            "days after": date("back") + datetime.timedelta(days=int(P["daysAfter"])),
        }[due]
        move(day, "payments", net + tax)
        move(day + datetime.timedelta(days=int(P["reclaimAfter"])), "reclaim", back)

kept = cents(totals["all"]["budget"] * D(P["contingency"]))
left = kept + min(D(0), totals["all"]["variance"])
for table, kind in (("accounts", "account"), ("departments", "department")):
    names = sorted(g[1] for g in totals if g[0] == kind)
    for i, name in enumerate(names, 1):
        rows.append((table, i, kind, name))
        rows += [(table, i, c, totals[(kind, name)][c]) for c in COLUMNS]
    i = len(names) + 1
    rows.append((table, i, "kind", "contingency"))
    rows += [(table, i, c, kept if c in ("budget", "toComplete", "finalCost") else D(0)) for c in COLUMNS]
    rows.append((table, i + 1, "kind", "total"))
    for c in COLUMNS:
        more = kept if c in ("budget", "toComplete", "finalCost") else D(0)
        rows.append((table, i + 1, c, totals["all"][c] + more))

for n, s in sorted(T["scenarios"].items()):
    more = cents(num(s, "other"))
    for line in T["lines"].values():
        if line["type"] == s.get("type") and not yes(line, "struck"):
            now = sum(plan(line))
            dearer = sum(plan(line, num(s, "dearer")))
            longer = sum(plan(line, num(s, "dearer"), num(s, "moreTimes")))
            # dearer only what is not invoiced
            share = max(D(0), (finals[id(line)] - num(line, "invoiced")) / now) if now else D(0)
            if not yes(line, "complete"):
                more += report(line, now + (dearer - now) * share + longer - dearer) - report(line, now)
    rows += [("scenarios", n, "more", more), ("scenarios", n, "left", left - more)]

for d in T["deposits"].values():
    move(date("ordered"), "depositsOut", D(d["amount"]))
    move(datetime.date.fromisoformat(d["back"]), "depositsBack", D(d["amount"]))
so_far = D(0)
for i, week in enumerate(sorted(weeks), 1):
    w = weeks[week]
    cash = w["payments"] + w["depositsOut"] - w["depositsBack"] - w["reclaim"]
    so_far += cash
    serial = (week - datetime.date(1899, 12, 30)).days
    rows += [
        ("weeks", i, "week", serial),
        ("weeks", i, "payments", w["payments"]),
        ("weeks", i, "reclaim", w["reclaim"]),
        ("weeks", i, "cash", cash),
        ("weeks", i, "soFar", so_far),
    ]
rows += [("summary", 1, "contingency", kept), ("summary", 1, "contingencyLeft", left)]

writer = csv.writer(sys.stdout, lineterminator="\n")
writer.writerow(("table", "row", "key", "value"))
writer.writerows(rows)
