# One door to everything. `make` alone lists the words.
PY     ?= python3
VENV   := .venv
BIN    := $(VENV)/bin
CARD   ?= src/wintertight/demo/cards/middle-travel-trailer.toml
JOBS   ?= 2

.DEFAULT_GOAL := words

.PHONY: words
words: ## list the words this Makefile knows
	@grep -hE '^[a-z-]+:.*## ' $(MAKEFILE_LIST) | awk 'BEGIN {FS = ":.*## "} {printf "  make %-8s %s\n", $$1, $$2}'

$(BIN)/python:
	$(PY) -m venv --without-pip $(VENV)

# Debian's python3 brings venv but not ensurepip: the system's pip installs into the environment.
$(VENV)/.run: pyproject.toml | $(BIN)/python
	$(PY) -m pip --python $(BIN)/python install --quiet --disable-pip-version-check --editable .
	@touch $@

$(VENV)/.test: pyproject.toml | $(BIN)/python
	$(PY) -m pip --python $(BIN)/python install --quiet --disable-pip-version-check --editable '.[test]'
	@touch $@ $(VENV)/.run

.PHONY: plan
plan: $(VENV)/.run ## set up, plan the bundled coach, write its job sheet (CARD=... for another)
	@mkdir -p out
	@$(BIN)/wintertight plan $(CARD) --pdf out/job-sheet.pdf

.PHONY: test
test: $(VENV)/.test ## set up and run every test
	$(BIN)/pytest -n $(JOBS)

.PHONY: check
check: $(VENV)/.test ## fast: lint, types, layers, unit tests
	$(BIN)/ruff check
	$(BIN)/ruff format --check
	$(BIN)/mypy
	$(BIN)/lint-imports
	$(BIN)/pytest -q tests/unit tests/architecture

.PHONY: bench
bench: $(VENV)/.test ## measure, each figure as a ratio against a reference in the same run
	$(BIN)/python -m bench

.PHONY: docs
docs: $(VENV)/.test ## write the generated manual pages anew
	$(BIN)/python -m docs.generate
