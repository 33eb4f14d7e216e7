"""read_csv.py FILE: one JSON string a line in, a CSV file each; its rows as Python's csv module reads them, out."""
import csv
import io
import json
import sys

with open(sys.argv[1], encoding="utf-8") as lines:
    for line in lines:
        rows = list(csv.reader(io.StringIO(json.loads(line), newline=""), strict=True))
        print(json.dumps(rows))
