package field

// Mark is a box to tick. It shows what the document holds.
type Mark struct {
	Check
	// Mixed tells that the things it is about differ; nil: they never do.
	Mixed    func() bool
	get      func() bool
	updating bool
}

// NewMark makes a box to tick.
func NewMark(label string, get func() bool, put func(bool)) *Mark {
	m := &Mark{}
	m.ExtendBaseWidget(m)
	m.Text = label
	m.Use(get, put)
	m.Update()
	return m
}

// Use makes the box tell of another thing from the next Update on.
func (m *Mark) Use(get func() bool, put func(bool)) {
	m.get = get
	m.OnChanged = func(on bool) {
		if !m.updating {
			put(on)
			m.Update()
		}
	}
}

// Update shows what the document holds.
func (m *Mark) Update() {
	m.updating = true
	defer func() { m.updating = false }()
	if mixed := m.Mixed != nil && m.Mixed(); mixed != m.Partial {
		m.Partial = mixed
		m.Checked = m.Checked && !mixed // from half ticked, a press ticks
		m.Refresh()
	}
	if !m.Partial && m.Checked != m.get() {
		m.SetChecked(m.get())
	}
}
